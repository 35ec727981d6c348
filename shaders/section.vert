#version 330 core
layout(location = 0) in vec3 place;    // mm, from the picture's origin
uniform mat4 toClip;
out vec3 where;

void main() {
  where = place;
  gl_Position = toClip * vec4(place, 1.0);
}
