/**
 * A loader that shares one load among all who ask, and forgets a load that failed, so that the
 * next asking tries again.
 */
export function loaded<T>(load: () => Promise<T>): () => Promise<T> {
  let loading: Promise<T> | undefined;
  return () => {
    loading ??= load().catch((problem: unknown) => {
      loading = undefined;
      throw problem;
    });
    return loading;
  };
}
