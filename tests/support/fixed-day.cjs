// Loaded first into a program that tests start, so that what it prints does not depend on the day on which they run. For it the clock
// stood at noon of that day when it started, noon where the machine is, and runs on from there: what takes time is still measured.
const { now } = Date;
const shift = new Date(2026, 10, 20, 12).getTime() - now();
Date.now = () => now() + shift;
globalThis.Date = new Proxy(Date, {
  construct: (Real, given, target) =>
    Reflect.construct(Real, given.length === 0 ? [Date.now()] : given, target),
  apply: () => String(new Date()),
});
