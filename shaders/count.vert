#version 330 core
layout(location = 0) in vec3 place;    // mm, from the picture's origin
uniform mat4 toClip;
uniform vec4 plane;                    // kept where dot(plane, (place, 1)) >= 0

void main() {
  vec4 at = vec4(place, 1.0);
  gl_ClipDistance[0] = dot(plane, at);
  gl_Position = toClip * at;
}
