/** TABLE: what a reading taken in place can prove. */

/** For a quantity read in place: which way neighbours bend it, and what each limit can still prove. */
export type InCircuitTruth = {
  readonly quantity: string;
  readonly bias: string;
  readonly upperLimit: string;
  readonly lowerLimit: string;
  readonly exception: string;
};

/** Parallel paths only lower resistance, ESR and insulation and only raise capacitance and leakage. Source: common practice. */
export const IN_CIRCUIT_TRUTH: readonly InCircuitTruth[] = [
  {
    quantity: "resistance",
    bias: "reads low or true (parallel paths)",
    upperLimit: "reading - U > limit: bad for certain; else nothing",
    lowerLimit: "nothing until lifted",
    exception: "charged capacitor, diodes and cold junctions, polarity: repeat with leads swapped",
  },
  {
    quantity: "insulation",
    bias: "reads low or true",
    upperLimit: "-",
    lowerLimit: "reading - U >= limit: good for certain; else nothing",
    exception: "test volts also stress neighbours",
  },
  {
    quantity: "capacitance",
    bias: "reads high or true (parallel capacitors); leaks make hand meters read high",
    upperLimit: "nothing until lifted",
    lowerLimit: "reading + U < limit: bad for certain; else nothing",
    exception: "low parallel resistance spoils the reading both ways",
  },
  {
    quantity: "ESR",
    bias: "reads low or true",
    upperLimit: "reading - U > limit: bad for certain; else nothing",
    lowerLimit: "-",
    exception: "low-ohm windings hide it",
  },
  {
    quantity: "leakage current",
    bias: "reads high or true",
    upperLimit: "reading + U <= limit: good for certain; else nothing",
    lowerLimit: "-",
    exception: "tubes cold, bleeders lifted",
  },
  {
    quantity: "inductance / winding ohms",
    bias: "winding ohms read low or true; inductance may read either way (capacitor across it, shorted turn)",
    upperLimit: "ohms: reading - U > limit: bad for certain; inductance: nothing until lifted",
    lowerLimit: "nothing until lifted",
    exception: "temperature of copper 0.39 %/°C",
  },
];
