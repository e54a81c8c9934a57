#include "ui/view/gl_pictures.hpp"

#include <QElapsedTimer>
#include <QOffscreenSurface>
#include <QOpenGLFunctions>
#include <QPainter>

#include "ui/view/surface_format.hpp"

namespace endplate::ui {
namespace {

int errors_of(QOpenGLFunctions* gl) {
  int errors = 0;
  // A lost context reports for ever.
  while (errors < 16 && gl->glGetError() != GL_NO_ERROR) ++errors;
  return errors;
}

}  // namespace

GlPictures::GlPictures(QOffscreenSurface& surface)
    : surface_(surface),
      stage_({[this] { context_.makeCurrent(&surface_); },
              [this] { return QOpenGLContext::currentContext() == &context_; }}) {
  context_.setFormat(surface_format());
  // Only now: the stage takes the context that is current.
  ready_ = context_.create() && context_.makeCurrent(&surface_) && stage_.initialise();
}

GlPictures::~GlPictures() {
  if (context_.isValid() && context_.makeCurrent(&surface_)) {
    stage_.release();
    context_.doneCurrent();
  }
}

void GlPictures::set(const PictureOrder& order) {
  const bool new_meshes = order.meshes != meshes_;
  const bool new_style = order.style != style_;
  const bool new_marks = order.marks != marks_;
  stage_.set_size(order.pixels);
  stage_.set_samples(order.samples);
  stage_.set_camera(order.camera);
  if (new_style) stage_.set_style(order.style);
  if (new_meshes) stage_.set_meshes(order.meshes);
  if (new_meshes || new_marks || new_style) {
    stage_.set_extras(extras_of(*order.marks, order.meshes->scene, order.style->colours()));
  }
  meshes_ = order.meshes;
  style_ = order.style;
  marks_ = order.marks;
}

Picture GlPictures::draw(const PictureOrder& order) {
  Picture picture;
  picture.number = order.number;
  picture.meshes = order.meshes;
  if (!ready_) return picture;
  QElapsedTimer timer;
  timer.start();
  set(order);
  picture.image = stage_.paint();
  picture.gl_errors = errors_of(context_.functions());
  QPainter painter(&picture.image);
  painter.scale(order.scale, order.scale);
  picture.layout = paint_overlay(painter, order.overlay);
  picture.drawn_ms = static_cast<double>(timer.nsecsElapsed()) * 1e-6;
  return picture;
}

}  // namespace endplate::ui
