/** The part of clipper2-wasm that the figures use; its package names its own types at a path that is not there. */
declare module 'clipper2-wasm' {
  export interface PathD {
    assign(xyz: Float64Array): void;
    view(): Float64Array;
    delete(): void;
  }
  export interface PathsD {
    push_back(path: PathD): void;
    size(): number;
    get(index: number): PathD;
    delete(): void;
  }
  export interface Clipper2 {
    readonly PathD: new () => PathD;
    readonly PathsD: new () => PathsD;
    readonly FillRule: { readonly NonZero: object };
    readonly JoinType: { readonly Round: object };
    readonly EndType: { readonly Polygon: object };
    UnionSelfD(subjects: PathsD, fill: object, decimals: number): PathsD;
    DifferenceD(subjects: PathsD, clips: PathsD, fill: object, decimals: number): PathsD;
    InflatePathsD(
      paths: PathsD,
      delta: number,
      join: object,
      end: object,
      miterLimit: number,
      decimals: number,
      arcTolerance: number,
    ): PathsD;
  }
  export default function load(): Promise<Clipper2>;
}
