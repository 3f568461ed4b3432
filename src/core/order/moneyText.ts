/** Money in a sentence: to the cent, with the code of its currency where one is known. @example moneyText(4, "EUR") // "4.00 EUR" */
export const moneyText = (amount: number, currency?: string | null): string =>
  currency ? `${amount.toFixed(2)} ${currency}` : amount.toFixed(2);
