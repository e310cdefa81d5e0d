import { BufferGeometry, Float32BufferAttribute } from 'three';
import type { Mesh } from './mesh.ts';

export function toGeometry(mesh: Mesh): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute(mesh.positions, 3));
  geometry.setAttribute('normal', new Float32BufferAttribute(mesh.normals, 3));
  geometry.setAttribute('uv', new Float32BufferAttribute(mesh.uvs, 2));
  geometry.setAttribute('color', new Float32BufferAttribute(mesh.colours, 3));
  geometry.setIndex(mesh.indices);
  return geometry;
}
