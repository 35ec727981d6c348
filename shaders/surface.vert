#version 330 core
layout(location = 0) in vec3 place;   // mm, from the scene's origin or the tool's tip
layout(location = 1) in vec3 normal;
uniform mat4 toClip;
uniform mat4 toView;                  // turns normals towards the eye
out vec3 facing;

void main() {
  facing = mat3(toView) * normal;
  gl_Position = toClip * vec4(place, 1.0);
}
