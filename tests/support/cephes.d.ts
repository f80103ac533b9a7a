/** Types for Cephes, whose own cannot be reached through its package.json. */
declare module 'cephes' {
  interface Cephes {
    readonly compiled: Promise<void>;
    /** Complete integrals of second and first kind of 1 - m. */
    ellpe(complement: number): number;
    ellpk(complement: number): number;
    /** Incomplete integrals of second and first kind of m, 0 to 1. */
    ellie(phi: number, m: number): number;
    ellik(phi: number, m: number): number;
    ndtr(x: number): number;
    ndtri(p: number): number;
  }
  const cephes: Cephes;
  export default cephes;
}
