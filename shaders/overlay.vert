#version 330 core
layout(location = 0) in vec2 place;   // px from the lower left corner
layout(location = 1) in vec2 atlas;   // texture coordinates
layout(location = 2) in vec4 tint;
uniform vec2 viewport;
out vec2 spot;
out vec4 ink;

void main() {
  spot = atlas;
  ink = tint;
  gl_Position = vec4(place / viewport * 2.0 - 1.0, 0.0, 1.0);
}
