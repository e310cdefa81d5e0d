import {
  DirectionalLight,
  HemisphereLight,
  Mesh,
  MeshBasicMaterial,
  PerspectiveCamera,
  PlaneGeometry,
  Scene,
  Texture,
  type WebGLRenderer,
} from 'three';
import { litMaterial } from './lit-material.ts';

/**
 * Sets the card to making the programs of the view before there is anything to draw: it works at them while the page
 * paints wood and builds the barrel.
 */
export function warmUp(gl: WebGLRenderer): void {
  // Asking each program for its log makes the page wait until it is compiled; these are three's own and known good.
  gl.debug.checkShaderErrors = false;
  const scene = new Scene();
  const lamp = new DirectionalLight();
  lamp.castShadow = true;
  const map = new Texture();
  const shape = new PlaneGeometry();
  const lit = new Mesh(shape, litMaterial({ map, color: '#fff', theme: 'light' }));
  lit.receiveShadow = true;
  scene.add(lamp, new HemisphereLight(), lit, new Mesh(shape, new MeshBasicMaterial({ map, vertexColors: true })));
  gl.compile(scene, new PerspectiveCamera());
}
