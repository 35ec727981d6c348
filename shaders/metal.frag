#version 330 core
// Machined metal under a room of light: GGX of two roughnesses along and across the marks of the
// tool (Kulla and Conty 2017), its mirror bent along the marks, the room's lights blurred by the
// roughness, and the neutral tone curve of the Khronos group, which leaves colours that mean
// something as they are.
in vec3 facing;
in vec3 along;
in vec4 mirror;
in vec3 where;
in vec2 seat;
uniform int regions;                   // whose walls are drawn apart
uniform vec4 ring[8];                  // axis x, y; inner and outer radius squared
uniform vec2 span[8];                  // lower and upper height
uniform int sections;                  // planes that open the body together
uniform vec4 section[3];               // away where the height above all of them is above 0
uniform vec4 plain;                    // colour of all faces, linear, where its alpha is 1
uniform float clear;                   // how much of what lies behind is seen, 0 to 1
uniform float day;                     // 1 on light paper, 0 on dark
out vec4 pixel;

const float PI = 3.14159265;

// Light that comes from a direction, in view space (x right, y up, z to the eye), blurred.
float room(vec3 d, float blur) {
  float soft = 0.08 + blur;
  float level = mix(0.34, 0.95, smoothstep(-0.55 - soft, 0.75 + soft, d.y));
  float upper = dot(d, normalize(vec3(-0.55, 0.68, 0.52)));
  float side = dot(d, normalize(vec3(0.86, 0.16, 0.38)));
  float wide = 0.16 + 0.55 * blur;
  float box = 1.55 * smoothstep(0.86 - wide, 0.86 + wide, upper);
  float strip = 0.75 * smoothstep(0.93 - wide, 0.93 + wide, side);
  float gain = 1.0 / (1.0 + 1.6 * blur);
  return level + gain * (box + strip);
}

float lobe(vec3 n, vec3 t, vec3 b, vec3 h, float at, float ab) {
  vec3 s = vec3(dot(t, h) / at, dot(b, h) / ab, dot(n, h));
  float q = dot(s, s);
  return 1.0 / (PI * at * ab * q * q);
}

float sight(vec3 n, vec3 t, vec3 b, vec3 v, vec3 l, float at, float ab) {
  float nv = max(dot(n, v), 1e-4);
  float nl = max(dot(n, l), 1e-4);
  float lv = nl * length(vec3(at * dot(t, v), ab * dot(b, v), nv));
  float ll = nv * length(vec3(at * dot(t, l), ab * dot(b, l), nl));
  return 0.5 / (lv + ll);
}

vec3 toned(vec3 c) {
  float x = min(c.r, min(c.g, c.b));
  float offset = x < 0.08 ? x - 6.25 * x * x : 0.04;
  c -= offset;
  float peak = max(c.r, max(c.g, c.b));
  const float start = 0.76;
  if (peak >= start) {
    float d = 1.0 - start;
    float next = 1.0 - d * d / (peak + d - start);
    c *= next / peak;
    float g = 1.0 - 1.0 / (0.15 * (peak - next) + 1.0);
    c = mix(c, vec3(next), g);
  }
  return mix(12.92 * c, 1.055 * pow(max(c, vec3(1e-6)), vec3(1.0 / 2.4)) - 0.055, step(0.0031308, c));
}

// The room is not endless: a flat face mirrors another part of it from end to end.
vec3 from(vec3 d) {
  return normalize(d + vec3(seat, 0.0));
}

void main() {
  for (int i = 0; i < regions; i++) {
    vec2 off = where.xy - ring[i].xy;
    float square = dot(off, off);
    bool within = square > ring[i].z && square < ring[i].w;
    if (within && where.z > span[i].x && where.z < span[i].y) {
      discard;
    }
  }
  float above = sections > 0 ? 1e9 : -1.0;
  for (int i = 0; i < sections; i++) {
    above = min(above, dot(section[i], vec4(where, 1.0)));
  }
  if (above > 0.0) {
    discard;
  }
  vec3 own = mix(mirror.rgb, plain.rgb, plain.a);
  vec3 n = normalize(facing);
  vec3 v = vec3(0.0, 0.0, 1.0);
  if (n.z < 0.0) {
    n = -n;
  }
  bool cut = dot(along, along) > 0.25;
  float alpha = cut ? 0.10 : 0.34;
  float stretch = cut ? 0.62 : 0.0;
  // Flanks finer than pixels would glitter: roughness grows with what the normal does in a pixel.
  vec3 dx = dFdx(n);
  vec3 dy = dFdy(n);
  float spread = min(2.0 * 0.25 * (dot(dx, dx) + dot(dy, dy)), 0.18);
  alpha = min(1.0, sqrt(alpha * alpha + spread));
  vec3 t = cut ? along - n * dot(n, along) : vec3(n.z, 0.0, -n.x);
  t = dot(t, t) < 1e-8 ? normalize(cross(n, vec3(0.31, 0.95, 0.05))) : normalize(t);
  vec3 b = cross(n, t);
  // Smooth along the marks, rough across them.
  float at = max(alpha * (1.0 - stretch), 0.002);
  float ab = max(alpha * (1.0 + stretch), 0.002);
  vec3 bent = normalize(mix(n, cross(cross(t, v), t), 0.55 * stretch * min(1.0, 5.0 * sqrt(alpha))));
  float nv = clamp(dot(n, v), 0.0, 1.0);
  vec3 fresnel = own + (1.0 - own) * pow(1.0 - nv, 5.0) * 0.6;
  vec3 light = fresnel * room(from(reflect(-v, bent)), sqrt(alpha)) * 0.52;
  light += own * room(from(n), 1.0) * 0.16;
  vec3 l = normalize(vec3(-0.42, 0.62, 0.66));
  float nl = max(dot(n, l), 0.0);
  vec3 h = normalize(l + v);
  light += fresnel * lobe(n, t, b, h, at, ab) * sight(n, t, b, v, l, at, ab) * nl * 0.35;
  float open = mirror.a;
  light *= open * (0.55 + 0.45 * open);
  // half a step of noise, so that wide faces show no bands
  float noise = fract(52.9829189 * fract(dot(gl_FragCoord.xy, vec2(0.06711056, 0.00583715))));
  pixel = vec4(toned(light * mix(0.86, 1.0, day)) + (noise - 0.5) / 255.0, 1.0 - clear);
}
