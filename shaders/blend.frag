#version 330 core
in vec2 at;
uniform sampler2D picture;             // rows from below
out vec4 pixel;

void main() {
  pixel = vec4(texture(picture, at).rgb, 1.0);
}
