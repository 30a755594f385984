/**
 * The part of a standard normal distribution that lies above `z`: 0.5 at 0, 0.05 near 1.645.
 * Absolute error below 1e-14.
 *
 * Half the complementary error function of z/√2. Near the middle it comes from the power
 * series of erf, NIST Digital Library of Mathematical Functions (dlmf.nist.gov) 7.6.2, whose
 * terms are all of one sign; in the tails from the continued fraction of Abramowitz and Stegun,
 * Handbook of Mathematical Functions, 7.1.14 (the one of DLMF 7.9).
 */
export function normalTail(z: number): number {
  if (z < 0) return 1 - normalTail(-z);
  const x = z / Math.SQRT2;
  return (x < 2 ? 1 - errorFunction(x) : errorTail(x)) / 2;
}

// erf x = 2/√π e^(-x²) Σ 2ⁿ x^(2n+1) / (1·3·…·(2n+1))
function errorFunction(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; term > sum * Number.EPSILON; n++) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
}

// √π e^(x²) erfc x = 1/(x + (1/2)/(x + (2/2)/(x + (3/2)/(x + …)))), from the far end inwards.
// At x = 2, the worst case, 120 steps agree with 240 to the last digit.
function errorTail(x: number): number {
  let below = x;
  for (let step = 120; step > 0; step--) below = x + step / 2 / below;
  return Math.exp(-x * x) / (Math.sqrt(Math.PI) * below);
}
