#version 330 core
out vec4 pixel;

void main() {
  pixel = vec4(1.0);
}
