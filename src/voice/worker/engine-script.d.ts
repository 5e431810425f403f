declare module 'followrest-engine/engine.mjs' {
  /** Made by src/voice/build from the npm package. */
  export function startEngine(module: object): unknown;
}
