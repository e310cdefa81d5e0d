import { Color, MeshPhongMaterial, Vector3, type Texture } from 'three';
import type { Theme } from '../painting/oak.ts';
import { LAMP_FROM } from './lamp-from.ts';

/** What a thing in the lamp's light is made of. */
interface Stuff {
  readonly map: Texture;
  readonly color: string;
  readonly theme: Theme;
  /** 0: wood and plastic; 1: bare metal, which shows only what it mirrors. */
  readonly metal?: number;
  /** How sharply metal mirrors the lamp: about 10 when dull, 60 when bright. */
  readonly polish?: number;
  /** Below 1 the sheet is clear. */
  readonly opacity?: number;
}

/** What metal mirrors: vault, wall at the height of the eye, floor, the lamp's glow and what comes in at the door. Linear. */
const ROUND_ABOUT: Record<Theme, readonly (readonly [number, number, number])[]> = {
  light: [
    [0.3, 0.27, 0.22],
    [0.66, 0.6, 0.5],
    [0.17, 0.145, 0.115],
    [0.62, 0.58, 0.5],
    [0.22, 0.23, 0.25],
  ],
  dark: [
    [0.07, 0.054, 0.038],
    [0.22, 0.165, 0.115],
    [0.06, 0.046, 0.034],
    [0.62, 0.45, 0.26],
    [0.045, 0.047, 0.062],
  ],
};

/**
 * One material for all that stands in the light, so that the card has one program to make: wood, hoops and plate differ
 * by numbers alone. Metal mirrors its surroundings by a formula; a picture of them, blurred for brushed steel, took the
 * card longer than all the rest of the first frame.
 */
export function litMaterial(stuff: Stuff): MeshPhongMaterial {
  const { map, color, theme, metal = 0, polish = 30, opacity = 1 } = stuff;
  const material = new MeshPhongMaterial({
    map,
    color,
    vertexColors: true,
    shininess: polish,
    specular: new Color(metal, metal, metal),
    transparent: opacity < 1,
    opacity,
  });
  material.onBeforeCompile = (shader) => {
    Object.assign(shader.uniforms, {
      metal: { value: metal },
      roundAbout: { value: ROUND_ABOUT[theme].map((rgb) => new Vector3(...rgb)) },
      lampFrom: { value: new Vector3(...LAMP_FROM).normalize() },
    });
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <common>', `#include <common>\n${MIRRORED}`)
      .replace('#include <envmap_fragment>', SHINE);
  };
  // All of them share one program.
  material.customProgramCacheKey = () => 'lit';
  return material;
}

const MIRRORED = /* glsl */ `
uniform float metal;
uniform vec3 roundAbout[5];
uniform vec3 lampFrom;
vec3 mirrored(vec3 towards) {
  vec3 above = mix(roundAbout[1], roundAbout[0], smoothstep(0.05, 0.8, towards.y));
  vec3 seen = mix(roundAbout[2], above, smoothstep(-0.6, 0.15, towards.y));
  seen += roundAbout[3] * exp(5.0 * (dot(towards, lampFrom) - 1.0));
  return seen + roundAbout[4] * exp(4.0 * (dot(towards, vec3(0.79, 0.39, -0.47)) - 1.0));
}`;

const SHINE = /* glsl */ `
if (metal > 0.0) {
  vec3 towards = inverseTransformDirection(reflect(-geometryViewDir, normal), viewMatrix);
  outgoingLight = (1.0 - metal) * (reflectedLight.directDiffuse + reflectedLight.indirectDiffuse)
    + diffuseColor.rgb * (metal * mirrored(towards) + reflectedLight.directSpecular);
}`;
