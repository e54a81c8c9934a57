#include "ui/view/mesh_actor.hpp"

#include <vtkActor.h>
#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkNew.h>
#include <vtkOpenGLPolyDataMapper.h>
#include <vtkOpenGLVertexBufferObject.h>
#include <vtkPlane.h>
#include <vtkPlaneCollection.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>
#include <vtkProperty.h>
#include <vtkShaderProperty.h>
#include <vtkTypeInt32Array.h>
#include <vtkUnsignedCharArray.h>

#include <algorithm>
#include <cstring>
#include <string>

namespace endplate::ui {

struct MeshActor::Parts {
  vtkNew<vtkFloatArray> points;
  vtkNew<vtkFloatArray> normals;
  vtkNew<vtkUnsignedCharArray> colours;
  vtkNew<vtkPoints> places;
  vtkNew<vtkPolyData> data;
  vtkNew<vtkOpenGLPolyDataMapper> mapper;
  vtkNew<vtkActor> actor;
  std::string rim;
};

namespace {

void copy(const std::vector<float>& from, vtkFloatArray* to) {
  const auto tuples = static_cast<vtkIdType>(from.size() / 3);
  if (to->GetNumberOfTuples() != tuples) to->SetNumberOfTuples(tuples);
  if (!from.empty()) std::memcpy(to->GetPointer(0), from.data(), from.size() * sizeof(float));
  to->Modified();
}

}  // namespace

MeshActor::MeshActor() : parts_(std::make_unique<Parts>()) {
  Parts& p = *parts_;
  p.points->SetNumberOfComponents(3);
  p.normals->SetNumberOfComponents(3);
  p.normals->SetName("normals");
  p.colours->SetNumberOfComponents(4);
  p.colours->SetName("colours");
  p.places->SetData(p.points);
  p.data->SetPoints(p.places);
  p.data->GetPointData()->SetNormals(p.normals);
  p.data->GetPointData()->SetScalars(p.colours);
  p.mapper->SetInputData(p.data);
  p.mapper->SetColorModeToDirectScalars();
  // Limbs stand about the origin: no vertex needs shifting, and its bounds need not be found.
  p.mapper->SetVBOShiftScaleMethod(vtkOpenGLVertexBufferObject::DISABLE_SHIFT_SCALE);
  p.actor->SetMapper(p.mapper);
  p.actor->SetPickable(false);
  // VTK's pass for translucent things in any order costs more than all else. Only fronts are drawn
  // translucent, in the order of the actors, so that blending in the one pass will do.
  p.actor->ForceOpaqueOn();
  p.actor->GetProperty()->SetAmbient(0.25);
  p.actor->GetProperty()->SetDiffuse(0.8);
}

MeshActor::~MeshActor() = default;

void MeshActor::set_mesh(const MeshBatch& mesh, bool same_triangles) {
  Parts& p = *parts_;
  copy(mesh.points, p.points);
  copy(mesh.normals, p.normals);
  if (!same_triangles) {
    vtkNew<vtkTypeInt32Array> offsets;
    vtkNew<vtkTypeInt32Array> corners;
    const auto triangles = static_cast<vtkIdType>(mesh.triangles());
    offsets->SetNumberOfTuples(triangles + 1);
    for (vtkIdType t = 0; t <= triangles; ++t) {
      offsets->SetValue(t, static_cast<vtkTypeInt32>(3 * t));
    }
    corners->SetNumberOfTuples(3 * triangles);
    std::ranges::transform(mesh.corners, corners->GetPointer(0),
                           [](std::uint32_t corner) { return static_cast<vtkTypeInt32>(corner); });
    vtkNew<vtkCellArray> cells;
    cells->SetData(offsets, corners);
    p.data->SetPolys(cells);
    p.colours->SetNumberOfTuples(static_cast<vtkIdType>(mesh.vertices()));
    p.colours->FillValue(128);
  }
  p.places->Modified();
  p.data->Modified();
}

void MeshActor::set_colours(const std::vector<std::uint8_t>& colours) {
  Parts& p = *parts_;
  const auto vertices = static_cast<vtkIdType>(colours.size() / 3);
  p.colours->SetNumberOfTuples(vertices);
  unsigned char* out = vertices > 0 ? p.colours->GetPointer(0) : nullptr;
  for (std::size_t v = 0; v < colours.size(); v += 3) {
    *out++ = colours[v];
    *out++ = colours[v + 1];
    *out++ = colours[v + 2];
    *out++ = 255;
  }
  p.colours->Modified();
  p.data->Modified();
}

void MeshActor::set_visible(bool visible) {
  parts_->actor->SetVisibility(visible);
}

void MeshActor::set_opacity(double opacity) {
  parts_->actor->GetProperty()->SetOpacity(opacity);
}

void MeshActor::set_shine(double specular) {
  parts_->actor->GetProperty()->SetSpecular(specular);
  parts_->actor->GetProperty()->SetSpecularPower(30.0);
}

void MeshActor::show_front_only(bool only) {
  parts_->actor->GetProperty()->SetBackfaceCulling(only);
}

void MeshActor::set_clip(vtkPlane* plane) {
  parts_->mapper->RemoveAllClippingPlanes();
  if (plane != nullptr) parts_->mapper->AddClippingPlane(plane);
}

void MeshActor::set_rim(double opacity_at_edge) {
  std::string rim = "//VTK::Normal::Impl\n  opacity = mix(opacity, " +
                    std::to_string(opacity_at_edge) +
                    ", pow(1.0 - abs(normalVCVSOutput.z), 2.5));\n";
  if (rim == parts_->rim) return;
  parts_->rim = std::move(rim);
  vtkShaderProperty* shader = parts_->actor->GetShaderProperty();
  shader->ClearFragmentShaderReplacement("//VTK::Normal::Impl", true);
  shader->AddFragmentShaderReplacement("//VTK::Normal::Impl", true, parts_->rim, false);
}

void MeshActor::pull_to_front() {
  parts_->actor->GetShaderProperty()->AddVertexShaderReplacement(
      "//VTK::PositionVC::Impl", true,
      "//VTK::PositionVC::Impl\n  gl_Position.z = 0.01 * gl_Position.z - 0.98 * gl_Position.w;\n",
      false);
}

void MeshActor::fill_sections() {
  parts_->actor->GetShaderProperty()->AddFragmentShaderReplacement(
      "//VTK::Light::Impl", false,
      "//VTK::Light::Impl\n  if (!gl_FrontFacing) fragOutput0 = vec4(vertexColorVSOutput.rgb, "
      "opacity);\n",
      false);
}

void MeshActor::set_unlit() {
  parts_->actor->GetProperty()->SetLighting(false);
}

vtkActor* MeshActor::actor() const {
  return parts_->actor;
}

}  // namespace endplate::ui
