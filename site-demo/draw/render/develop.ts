import type { Camera } from "../camera.ts";
import type { Light } from "../light.ts";
import { hashOf } from "../random.ts";
import type { Frame } from "./render.ts";

/** A finished picture, three bytes to a pixel. */
export interface Print {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
}

/** Turns light into a picture: lens blur, glow, exposure, corner shade, grain. */
export function develop(frame: Frame, camera: Camera, light: Light, seed: string): Print {
  const { width, height } = frame;
  const color = lensBlur(frame, camera);
  glow(color, width, height);
  const pixels = new Uint8Array(width * height * 3);
  const grain = grainOf(width, height, hashOf(seed));
  const [castR, castG, castB] = light.cast;
  const corner = Math.hypot(width, height) / 2;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = (y * width + x) * 3;
      const off = Math.hypot(x - width / 2, y - height / 2) / corner;
      const shade = light.exposure * (1 - light.vignette * off ** 2.4);
      const speck = grain[y * width + x] as number;
      const r = (color[at] as number) * shade * castR;
      const g = (color[at + 1] as number) * shade * castG;
      const b = (color[at + 2] as number) * shade * castB;
      const grey = 0.3 * r + 0.55 * g + 0.15 * b;
      for (let c = 0; c < 3; c++) {
        // A little grey in everything keeps strong colours from shouting.
        const tone = curve((c === 0 ? r : c === 1 ? g : b) * 0.84 + grey * 0.16);
        // Grain shows in the middle tones and leaves paper and night alone.
        const value = tone + speck * 0.018 * (0.35 + 2.6 * tone * (1 - tone));
        pixels[at + c] = Math.max(0, Math.min(255, Math.round(value * 255)));
      }
    }
  }
  return { width, height, pixels };
}

/** A film's curve: a soft toe, a long shoulder, out in screen values from 0 to 1. */
function curve(light: number): number {
  const x = Math.max(0, light);
  const film = (x * (2.51 * x * 0.62 + 0.05)) / (x * (2.43 * x * 0.62 + 0.56) + 0.12);
  const kept = Math.min(1, film);
  return kept <= 0.0031308 ? kept * 12.92 : 1.055 * kept ** (1 / 2.4) - 0.055;
}

/** Blurs what is not at the focus; sharp things keep their edges in front of it. */
function lensBlur(frame: Frame, camera: Camera): Float32Array {
  const { width, height, depth } = frame;
  const count = width * height;
  const blur = new Float32Array(count);
  const most = Math.max(width, height) * 0.028;
  for (let i = 0; i < count; i++) {
    const d = Math.max(camera.near, depth[i] as number);
    const off = Math.abs(1 - camera.focus / d) * camera.aperture * Math.max(width, height);
    blur[i] = Math.min(most, Math.max(0, off - 0.6));
  }
  let current = frame.color;
  for (let radius = most; radius > 1.2; radius /= 1.9) {
    current = blurLayer(current, frame.color, blur, width, height, radius);
  }
  return current;
}

function blurLayer(
  base: Float32Array,
  source: Float32Array,
  blur: Float32Array,
  width: number,
  height: number,
  radius: number,
): Float32Array {
  const count = width * height;
  const low = radius / 1.9;
  const sums = new Float32Array(count * 4);
  let any = false;
  for (let i = 0; i < count; i++) {
    const b = blur[i] as number;
    if (b <= low * 0.5) continue;
    any = true;
    const weight = Math.min(1, (b / radius) ** 2) + 1e-4;
    sums[i * 4] = (source[i * 3] as number) * weight;
    sums[i * 4 + 1] = (source[i * 3 + 1] as number) * weight;
    sums[i * 4 + 2] = (source[i * 3 + 2] as number) * weight;
    sums[i * 4 + 3] = weight;
  }
  if (!any) return base;
  // Three box blurs are near enough to a round lens at this size.
  const reach = Math.max(1, Math.round(radius * 0.55));
  for (let pass = 0; pass < 2; pass++) {
    boxBlur(sums, width, height, 4, reach);
  }
  const out = new Float32Array(base);
  for (let i = 0; i < count; i++) {
    const b = blur[i] as number;
    const weight = sums[i * 4 + 3] as number;
    if (b <= low || weight < 1e-5) continue;
    const share = Math.min(1, (b - low) / (radius - low));
    for (let c = 0; c < 3; c++) {
      const soft = (sums[i * 4 + c] as number) / weight;
      const own = base[i * 3 + c] as number;
      out[i * 3 + c] = own + (soft - own) * share;
    }
  }
  return out;
}

/** Averages over a square, in place; `channels` values to a pixel. */
function boxBlur(
  data: Float32Array,
  width: number,
  height: number,
  channels: number,
  reach: number,
): void {
  const line = new Float32Array(Math.max(width, height) * channels);
  const pass = (length: number, start: number, step: number) => {
    for (let c = 0; c < channels; c++) {
      let sum = 0;
      const first = data[start + c] as number;
      const last = data[start + (length - 1) * step + c] as number;
      for (let i = -reach; i <= reach; i++) {
        sum += i < 0 ? first : i >= length ? last : (data[start + i * step + c] as number);
      }
      for (let i = 0; i < length; i++) {
        line[i] = sum / (2 * reach + 1);
        const enter = i + reach + 1;
        const leave = i - reach;
        sum += enter >= length ? last : (data[start + enter * step + c] as number);
        sum -= leave < 0 ? first : (data[start + leave * step + c] as number);
      }
      for (let i = 0; i < length; i++) data[start + i * step + c] = line[i] as number;
    }
  };
  for (let y = 0; y < height; y++) pass(width, y * width * channels, channels);
  for (let x = 0; x < width; x++) pass(height, x * channels, width * channels);
}

/** Light that spills from the brightest spots. */
function glow(color: Float32Array, width: number, height: number): void {
  const bright = new Float32Array(color.length);
  for (let i = 0; i < color.length; i++) {
    bright[i] = Math.min(3, Math.max(0, (color[i] as number) - 1.1));
  }
  const reach = Math.max(1, Math.round(Math.max(width, height) * 0.009));
  boxBlur(bright, width, height, 3, reach);
  boxBlur(bright, width, height, 3, reach * 2);
  for (let i = 0; i < color.length; i++) {
    color[i] = (color[i] as number) + (bright[i] as number) * 0.3;
  }
}

/** Soft specks, about -1 to 1, a pixel or two across. */
function grainOf(width: number, height: number, seed: number): Float32Array {
  const grain = new Float32Array(width * height);
  let state = seed | 1;
  for (let i = 0; i < grain.length; i++) {
    state = Math.imul(state ^ (state >>> 15), 0x2c1b3c6d) + 0x9e3779b9;
    grain[i] = ((state >>> 8) / 8388608 - 1) * 1.6;
  }
  boxBlur(grain, width, height, 1, 1);
  return grain;
}
