/** Types of the functions we ask of cephes: its own are not reachable through its package file. */
declare module 'cephes' {
  interface Cephes {
    /** Resolves when the functions may be called. */
    readonly compiled: Promise<void>;
    /** Complete integrals of second and first kind; takes 1 - m. */
    ellpe(complement: number): number;
    ellpk(complement: number): number;
    /** Incomplete integrals of second and first kind; takes m, 0 to 1. */
    ellie(phi: number, m: number): number;
    ellik(phi: number, m: number): number;
    /** Standard normal distribution and its inverse. */
    ndtr(x: number): number;
    ndtri(p: number): number;
  }
  const cephes: Cephes;
  export default cephes;
}
