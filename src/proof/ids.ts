/** Small numbers for long texts: equal texts have one number. */

export class Ids {
  private readonly texts = new Map<string, number>();
  private readonly objects = new WeakMap<object, number>();

  ofText(text: string): number {
    const old = this.texts.get(text);
    if (old !== undefined) return old;
    this.texts.set(text, this.texts.size);
    return this.texts.size - 1;
  }

  /** By what is in it; an object that never changes is read once. */
  of(value: object): number {
    const old = this.objects.get(value);
    if (old !== undefined) return old;
    const made = this.ofText(JSON.stringify(value));
    this.objects.set(value, made);
    return made;
  }
}
