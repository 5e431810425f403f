/** Files the bundler gives an address for: see src/voice/build. */
declare module 'followrest-engine/engine.wasm?url' {
  const address: string;
  export default address;
}
declare module 'followrest-model/*?url' {
  const address: string;
  export default address;
}
declare module 'followrest-flite/flite.wasm?url' {
  const address: string;
  export default address;
}
declare module '*?worker&url' {
  const address: string;
  export default address;
}
