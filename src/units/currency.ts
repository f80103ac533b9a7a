/** Currencies and their decimals, from ISO 4217. */

export interface Currency {
  readonly code: string;
  /** 2 for cents. */
  readonly exponent: number;
}

/** Two decimals (ISO 4217, list one; from memory, a test checks another table). */
const cents =
  'AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP ' +
  'CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR ' +
  'IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN ' +
  'NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP ' +
  'STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VES WST XCD XCG YER ZAR ZMW ZWG';

const others: Readonly<Record<number, string>> = {
  0: 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF',
  3: 'BHD IQD JOD KWD LYD OMR TND',
};

const words = (text: string): string[] => text.split(' ');

const exponents: ReadonlyMap<string, number> = new Map([
  ...words(cents).map((code) => [code, 2] as const),
  ...Object.entries(others).flatMap(([exponent, codes]) =>
    words(codes).map((code) => [code, Number(exponent)] as const),
  ),
]);

export const currencyCodes: readonly string[] = [...exponents.keys()].sort();

/** Undefined when ISO 4217 lacks the code. */
export function currencyOf(code: string): Currency | undefined {
  const exponent = exponents.get(code);
  return exponent === undefined ? undefined : { code, exponent };
}
