// The town at night in space. The server sends the scene once and the panes' luminance for every hour; hour, room light
// and eye then change nothing but numbers the shaders read. Light is added up in cd/m² and shown as settled eyes see it
// (Book.Night.NightEyes says how and why); nothing is drawn while nothing changes, unless a lamp flickers.
import * as THREE from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';

const rows = 4096;
const veilDegrees = 3.5;
const nearer = 0.06;

// Luminance of pane p at the hour, its place, direction and colour.
const ofPane = `
uniform sampler2D uLight, uPanes;
uniform float uHour, uHours, uTime, uReference;
float luminance(int p) {
  int column = p / ${rows} * int(uHours), row = p % ${rows};
  float before = floor(uHour), share = uHour - before;
  float one = texelFetch(uLight, ivec2(column + int(before), row), 0).r;
  float other = texelFetch(uLight, ivec2(column + min(int(before) + 1, int(uHours) - 1), row), 0).r;
  vec4 lamp = texelFetch(uPanes, ivec2(1, p), 0);
  float flame = sin(uTime * 9.1 + float(p) * 1.7) * sin(uTime * 5.3 + float(p) * 2.9) * sin(uTime * 13.7 + float(p));
  return mix(one, other, share) * (1. + (uTime > 0. ? lamp.w * .35 * flame : 0.)) / uReference;
}
float falling(vec3 point, vec3 normal, vec4 pane, vec3 outwards, float reach) {
  vec3 ray = pane.xyz - point;
  float square = max(dot(ray, ray), pane.w);
  float ending = max(0., 1. - dot(ray, ray) / (reach * reach));
  return pane.w * max(0., dot(ray, normal)) * max(0., -dot(ray, outwards)) / (square * square) * ending * ending;
}
`;

const thrown = `
uniform float uLux;
vec3 thrown(vec3 normal, vec3 albedo) { return albedo * uLux / 3.14159265 * ((1. + normal.y) * .425 + .15 * max(0., normal.x)); }
`;

const shaders = {
  faces: {
    vertexShader: `attribute vec3 albedo; attribute float building; varying vec3 vLight; uniform float uReference, uChosen; ${thrown}
      void main() { vLight = thrown(normal, albedo) / uReference * (abs(building - uChosen) < .5 ? 1.6 : 1.); gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.); }`,
    fragmentShader: 'varying vec3 vLight; void main() { gl_FragColor = vec4(vLight, 1.); }',
  },
  panes: {
    vertexShader: `attribute vec2 across; attribute float pane; attribute float bars; varying vec2 vAcross; flat varying vec3 vColour; flat varying vec3 vGlass; flat varying float vMean; flat varying int vPane; flat varying float vBars; ${ofPane} ${thrown}
      void main() { vAcross = across; vPane = int(pane + .5); vBars = bars; vMean = luminance(vPane); vColour = texelFetch(uPanes, ivec2(2, vPane), 0).rgb;
        vGlass = thrown(normal, vec3(.05)) / uReference; gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.); }`,
    fragmentShader: `varying vec2 vAcross; flat varying vec3 vColour; flat varying vec3 vGlass; flat varying float vMean; flat varying int vPane; flat varying float vBars; uniform sampler2D uMap;
      float part(int i, int j) { return texelFetch(uMap, ivec2(j * 4 + i, vPane), 0).r; }
      void main() {
        vec2 at = clamp(vAcross * 4. - .5, 0., 3.); ivec2 k = min(ivec2(at), 2); vec2 f = at - vec2(k);
        float map = mix(mix(part(k.x, k.y), part(k.x + 1, k.y), f.x), mix(part(k.x, k.y + 1), part(k.x + 1, k.y + 1), f.x), f.y);
        vec2 soft = fwidth(vAcross), away = abs(vAcross - .5);
        float open = vBars > .5 ? min(smoothstep(.035 - soft.x / 2., .035 + soft.x / 2., away.x), smoothstep(.03 - soft.y / 2., .03 + soft.y / 2., away.y)) : 1.;
        gl_FragColor = vec4(vGlass + open * vMean * map * vColour, 1.);
      }`,
  },
  glows: {
    vertexShader: `attribute vec3 albedo; attribute float pane; attribute float reach; varying vec3 vAt; flat varying vec3 vNormal; flat varying vec3 vLight; flat varying vec4 vPane; flat varying vec3 vOut; flat varying float vReach; ${ofPane}
      void main() { int p = int(pane + .5); vAt = position; vNormal = normal; vReach = reach; vPane = texelFetch(uPanes, ivec2(0, p), 0); vOut = texelFetch(uPanes, ivec2(1, p), 0).xyz;
        vLight = luminance(p) * albedo * texelFetch(uPanes, ivec2(2, p), 0).rgb / 3.14159265; gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.); }`,
    fragmentShader: `varying vec3 vAt; flat varying vec3 vNormal; flat varying vec3 vLight; flat varying vec4 vPane; flat varying vec3 vOut; flat varying float vReach; ${ofPane}
      void main() { gl_FragColor = vec4(falling(vAt, vNormal, vPane, vOut, vReach) * vLight, 1.); }`,
  },
  veils: {
    vertexShader: `attribute float pane; varying vec2 vAway; flat varying vec3 vLight; ${ofPane}
      void main() {
        int p = int(pane + .5); vec4 middle = texelFetch(uPanes, ivec2(0, p), 0); vec3 outwards = texelFetch(uPanes, ivec2(1, p), 0).xyz;
        vec3 towards = cameraPosition - middle.xyz; float away = length(towards); float facing = dot(towards, outwards) / away;
        vLight = facing > 0. ? luminance(p) * middle.w * facing / (away * away) * texelFetch(uPanes, ivec2(2, p), 0).rgb : vec3(0.);
        vec4 seen = modelViewMatrix * vec4(middle.xyz + towards / away * min(${nearer}, away / 2.), 1.);
        vAway = position.xy * ${veilDegrees.toFixed(1)};
        seen.xy += position.xy * -seen.z * tan(radians(${veilDegrees.toFixed(1)})) * (facing > 0. ? 1. : 0.);
        gl_Position = projectionMatrix * seen;
      }`,
    fragmentShader: `varying vec2 vAway; flat varying vec3 vLight;
      void main() { float degrees = length(vAway); float end = max(0., 1. - degrees / ${veilDegrees.toFixed(1)}); gl_FragColor = vec4(10. * vLight / pow(max(degrees, .25), 2.) * end * end, 1.); }`,
  },
  shown: {
    vertexShader: 'varying vec2 vUv; void main() { vUv = uv; gl_Position = vec4(position.xy, 0., 1.); }',
    fragmentShader: `varying vec2 vUv; uniform sampler2D uSeen; uniform float uReference, uCamera;
      const vec3 Y = vec3(.2126, .7152, .0722);
      vec3 coded(vec3 c) { return mix(12.92 * c, 1.055 * pow(c, vec3(1. / 2.4)) - .055, step(.0031308, c)); }
      float saturated(float x) { return 1. - exp(-1.4 * x); }
      void main() {
        vec3 light = texture2D(uSeen, vUv).rgb;
        if (uCamera > .5) { gl_FragColor = vec4(coded(clamp(light, 0., 1.)), 1.); return; }
        float y = dot(light, Y); vec3 rods = vec3(.55, .72, 1.5) / dot(vec3(.55, .72, 1.5), Y);
        float blue = 1. - clamp((log(max(y * uReference, 1e-6)) / log(10.) + 2.) / 2.5, 0., 1.);
        vec3 seen = mix(light, y * rods, .75 * blue);
        float most = max(seen.r, max(seen.g, seen.b));
        vec3 apart = vec3(saturated(seen.r), saturated(seen.g), saturated(seen.b));
        gl_FragColor = vec4(coded(clamp(most > 0. ? mix(apart, saturated(most) / most * seen, .55) : vec3(0.), 0., 1.)), 1.);
      }`,
  },
};

const vector = a => new THREE.Vector3(a[0], a[1], a[2]);

// Corners of an outline, flat in space, as triangles.
const triangles = (corners, normal) => {
  if (corners.length <= 4) return corners.length === 3 ? [[0, 1, 2]] : [[0, 1, 2], [0, 2, 3]];
  const right = corners[1].clone().sub(corners[0]).normalize();
  const up = normal.clone().cross(right);
  return THREE.ShapeUtils.triangulateShape(corners.map(c => new THREE.Vector2(c.dot(right), c.dot(up))), []);
};

const points = flat => { const list = []; for (let i = 0; i < flat.length; i += 3) list.push(new THREE.Vector3(flat[i], flat[i + 1], flat[i + 2])); return list; };

const geometry = attributes => {
  const made = new THREE.BufferGeometry();
  for (const [name, [values, size]] of Object.entries(attributes)) made.setAttribute(name, new THREE.BufferAttribute(new Float32Array(values), size));
  return made;
};

const table = (values, width, height, format) => {
  const made = new THREE.DataTexture(values, width, height, format, THREE.FloatType);
  made.needsUpdate = true;
  return made;
};

// White paper in the room and the middle of the lit panes, as NightEyes.In weighs them.
const reference = (luminances, lux, camera) => {
  const paper = .8 * lux / Math.PI;
  const lit = luminances.filter(l => l > 1e-3).sort((a, b) => a - b);
  const middle = lit.length ? lit[Math.floor(lit.length / 2)] : 0;
  if (camera) return Math.max(middle, paper) / .8;
  return middle < paper ? paper : Math.pow(paper, .38) * Math.pow(middle, .62);
};

export function mount(place, listener) {
  const canvas = place.querySelector('canvas');
  let renderer;
  try {
    renderer = new THREE.WebGLRenderer({ canvas, antialias: false, powerPreference: 'low-power' });
    if (!renderer.getContext().getExtension('EXT_color_buffer_float')) throw new Error('no float targets');
  } catch {
    place.classList.add('flat');
    return null;
  }

  const still = matchMedia('(prefers-reduced-motion: reduce)');
  const uniforms = { uLight: { value: null }, uPanes: { value: null }, uMap: { value: null }, uSeen: { value: null }, uHour: { value: 0 }, uHours: { value: 1 }, uTime: { value: 0 }, uLux: { value: 1 }, uReference: { value: 1 }, uChosen: { value: -1 }, uCamera: { value: 0 } };
  const material = (name, more) => new THREE.ShaderMaterial({ ...shaders[name], uniforms, ...more });
  const adding = { transparent: true, depthWrite: false, blending: THREE.CustomBlending, blendSrc: THREE.OneFactor, blendDst: THREE.OneFactor };
  const camera = new THREE.PerspectiveCamera(34, 1, .02, 12);
  const controls = new OrbitControls(camera, canvas);
  controls.maxPolarAngle = Math.PI / 2 - .02;
  controls.minDistance = .15;
  controls.maxDistance = 5;
  const target = new THREE.WebGLRenderTarget(2, 2, { type: THREE.HalfFloatType, samples: 4 });
  uniforms.uSeen.value = target.texture;
  const sheet = new THREE.Mesh(new THREE.PlaneGeometry(2, 2), material('shown', { depthTest: false }));
  sheet.frustumCulled = false;
  const last = new THREE.Scene();
  last.add(sheet);
  let world = new THREE.Scene();
  let scene = null, light = null, asked = {}, waiting = false, gone = false, pickable = [], wanted = 0;

  const draw = now => {
    waiting = false;
    if (gone || !scene || !light) return;
    const flickers = !still.matches && !document.hidden && scene.panes.some(p => p.flickers);
    uniforms.uTime.value = flickers ? now / 1000 : 0;
    const around = asked.lux / Math.PI * .575 / uniforms.uReference.value;
    renderer.setRenderTarget(target);
    renderer.setClearColor(new THREE.Color().setRGB(.07 * around, .075 * around, .11 * around, THREE.LinearSRGBColorSpace), 1);
    renderer.clear();
    renderer.render(world, camera);
    renderer.setRenderTarget(null);
    renderer.render(last, camera);
    place.dataset.drawn = String(Number(place.dataset.drawn ?? 0) + 1);
    if (flickers) soon();
  };
  const soon = () => { if (!waiting && !gone) { waiting = true; requestAnimationFrame(draw); } };

  const build = made => {
    world.traverse(o => { o.geometry?.dispose(); o.material?.dispose(); });
    world = new THREE.Scene();
    const keys = [...new Set(made.faces.map(f => f.building).filter(b => b))];
    const face = { position: [[], 3], normal: [[], 3], albedo: [[], 3], building: [[], 1] };
    const lines = [];
    const owners = [];
    for (const f of made.faces) {
      const corners = points(f.corners), normal = vector(f.normal);
      for (const t of triangles(corners, normal)) {
        owners.push(f.building ?? null);
        for (const i of t) { face.position[0].push(...corners[i]); face.normal[0].push(...f.normal); face.albedo[0].push(...f.albedo); face.building[0].push(f.building ? keys.indexOf(f.building) : -2); }
      }
      if (f.inked) corners.forEach((c, i) => lines.push(...c, ...corners[(i + 1) % corners.length]));
    }
    const pane = { position: [[], 3], normal: [[], 3], across: [[], 2], pane: [[], 1], bars: [[], 1] };
    made.panes.forEach((p, n) => {
      const corners = points(p.corners);
      for (const [i, u, v] of [[0, 0, 0], [1, 1, 0], [2, 1, 1], [0, 0, 0], [2, 1, 1], [3, 0, 1]]) { pane.position[0].push(...corners[i]); pane.normal[0].push(...p.normal); pane.across[0].push(u, v); pane.pane[0].push(n); pane.bars[0].push(p.bars ? 1 : 0); }
    });
    const glow = { position: [[], 3], normal: [[], 3], albedo: [[], 3], pane: [[], 1], reach: [[], 1] };
    for (const g of made.glows) {
      const corners = points(g.corners), normal = vector(g.normal);
      for (const t of triangles(corners, normal)) for (const i of t) { glow.position[0].push(...corners[i]); glow.normal[0].push(...g.normal); glow.albedo[0].push(...g.albedo); glow.pane[0].push(g.pane); glow.reach[0].push(g.reach); }
    }
    const count = Math.max(1, made.panes.length);
    const panes = new Float32Array(count * 12), map = new Float32Array(count * 16);
    made.panes.forEach((p, n) => {
      panes.set([...p.middle, p.area, ...p.normal, p.flickers ? 1 : 0, ...p.colour, 0], n * 12);
      map.set(p.map, n * 16);
    });
    uniforms.uPanes.value = table(panes, 3, count, THREE.RGBAFormat);
    uniforms.uMap.value = table(map, 16, count, THREE.RedFormat);
    const faces = new THREE.Mesh(geometry(face), material('faces'));
    const glass = new THREE.Mesh(geometry(pane), material('panes'));
    const glows = new THREE.Mesh(geometry(glow), material('glows', adding));
    const veil = new THREE.InstancedBufferGeometry();
    veil.setAttribute('position', new THREE.BufferAttribute(new Float32Array([-1, -1, 0, 1, -1, 0, 1, 1, 0, -1, -1, 0, 1, 1, 0, -1, 1, 0]), 3));
    veil.setAttribute('pane', new THREE.InstancedBufferAttribute(new Float32Array(made.panes.map((_, n) => n)), 1));
    veil.instanceCount = made.panes.length;
    const veils = new THREE.Mesh(veil, material('veils', adding));
    const inked = new THREE.LineSegments(geometry({ position: [lines, 3] }), new THREE.LineBasicMaterial({ color: 0xb4b4b4, transparent: true, depthWrite: false, blending: THREE.CustomBlending, blendSrc: THREE.ZeroFactor, blendDst: THREE.SrcColorFactor, toneMapped: false }));
    [faces, glass, glows, veils, inked].forEach((o, i) => { o.frustumCulled = false; o.renderOrder = i; world.add(o); });
    pickable = [{ object: glass, of: i => ({ pane: Math.floor(i / 2), building: made.panes[Math.floor(i / 2)].building }) }, { object: faces, of: i => ({ pane: -1, building: owners[i] }) }];
    place.dataset.calls = '6';
    place.dataset.triangles = String(face.building[0].length / 3 + pane.pane[0].length / 3 + glow.pane[0].length / 3 + made.panes.length * 2);
    scene = { ...made, keys };
  };

  const lit = made => {
    light = made;
    const hours = made.hours.length, count = made.luminance.length / hours, across = Math.ceil(count / rows) || 1;
    const values = new Float32Array(hours * across * Math.min(rows, Math.max(1, count)));
    for (let p = 0; p < count; p++) for (let h = 0; h < hours; h++) values[(p % rows) * hours * across + Math.floor(p / rows) * hours + h] = made.luminance[p * hours + h];
    uniforms.uLight.value = table(values, hours * across, Math.min(rows, Math.max(1, count)), THREE.RedFormat);
    uniforms.uHours.value = hours;
  };

  const set = () => {
    const hours = light.hours, end = hours[hours.length - 1];
    const at = end > 0 ? Math.min(1, Math.max(0, asked.hour / end)) * (hours.length - 1) : 0;
    const before = Math.floor(at), after = Math.ceil(at), now = [];
    for (let p = 0; p < scene.panes.length; p++) { const i = p * hours.length; now.push(light.luminance[i + before] + (light.luminance[i + after] - light.luminance[i + before]) * (at - before)); }
    uniforms.uHour.value = at;
    uniforms.uLux.value = asked.lux;
    uniforms.uCamera.value = asked.camera ? 1 : 0;
    uniforms.uReference.value = reference(now, asked.lux, asked.camera);
    uniforms.uChosen.value = scene.keys.indexOf(asked.building);
  };

  const look = name => {
    const eye = scene.eyes.find(e => e.name === name) ?? scene.eyes[0];
    controls.target.set(...eye.to);
    // A narrow picture is looked at from further away.
    camera.position.set(...eye.at).sub(controls.target).multiplyScalar(Math.max(1, 1.5 / camera.aspect)).add(controls.target);
    controls.update();
  };

  const fetched = async path => { const answer = await fetch(path); if (!answer.ok) throw new Error(`${path}: ${answer.status}`); return answer.json(); };

  const size = () => {
    const box = place.getBoundingClientRect(), dots = Math.min(2, devicePixelRatio);
    const [w, h] = [Math.max(2, Math.round(box.width)), Math.max(2, Math.round(box.height))];
    renderer.setPixelRatio(dots);
    renderer.setSize(w, h, false);
    target.setSize(w * dots, h * dots);
    camera.aspect = w / h;
    camera.updateProjectionMatrix();
    soon();
  };

  const pick = event => {
    const box = canvas.getBoundingClientRect();
    const caster = new THREE.Raycaster();
    caster.setFromCamera(new THREE.Vector2((event.clientX - box.left) / box.width * 2 - 1, 1 - (event.clientY - box.top) / box.height * 2), camera);
    const hits = pickable.flatMap(p => caster.intersectObject(p.object).map(h => ({ ...p.of(h.faceIndex), distance: h.distance }))).sort((a, b) => a.distance - b.distance);
    if (hits.length && hits[0].building) listener.invokeMethodAsync('Picked', hits[0].building, hits[0].pane);
  };

  let pressed = null;
  canvas.addEventListener('pointerdown', e => { pressed = [e.clientX, e.clientY]; });
  canvas.addEventListener('pointerup', e => { if (pressed && Math.hypot(e.clientX - pressed[0], e.clientY - pressed[1]) < 5) pick(e); pressed = null; });
  canvas.addEventListener('keydown', e => {
    const turn = { ArrowLeft: [-.12, 0, 1], ArrowRight: [.12, 0, 1], ArrowUp: [0, -.08, 1], ArrowDown: [0, .08, 1], '+': [0, 0, .88], '=': [0, 0, .88], '-': [0, 0, 1 / .88] }[e.key];
    if (!turn) return;
    e.preventDefault();
    const away = new THREE.Spherical().setFromVector3(camera.position.clone().sub(controls.target));
    away.theta += turn[0];
    away.phi = Math.min(controls.maxPolarAngle, Math.max(.1, away.phi + turn[1]));
    away.radius = Math.min(controls.maxDistance, Math.max(controls.minDistance, away.radius * turn[2]));
    camera.position.setFromSpherical(away).add(controls.target);
    controls.update();
    soon();
  });
  controls.addEventListener('change', soon);
  still.addEventListener('change', soon);
  document.addEventListener('visibilitychange', soon);
  const watcher = new ResizeObserver(size);
  watcher.observe(place);
  size();

  return {
    async show(next) {
      const mine = ++wanted;
      const before = asked;
      asked = next;
      if (!scene || before.version !== next.version) {
        const made = await fetched('night/scene.json');
        if (mine !== wanted || gone) return;
        build(made);
        light = null;
      }
      if (!light || before.version !== next.version || before.off !== next.off) {
        const made = await fetched(`night/light.json?off=${encodeURIComponent(next.off)}`);
        if (mine !== wanted || gone) return;
        lit(made);
      }
      set();
      if (before.eye !== next.eye || before.version === undefined) look(next.eye);
      place.classList.add('ready');
      soon();
    },
    dispose() {
      gone = true;
      watcher.disconnect();
      controls.dispose();
      target.dispose();
      renderer.dispose();
      document.removeEventListener('visibilitychange', soon);
    },
  };
}
