#pragma once
// One drawing call of VTK: a batch of triangles whose points and colours change in place.
#include <cstdint>
#include <memory>
#include <vector>

#include "ui/view/mesh_batch.hpp"

class vtkActor;
class vtkPlane;

namespace endplate::ui {

class MeshActor {
 public:
  MeshActor();
  ~MeshActor();
  MeshActor(const MeshActor&) = delete;
  MeshActor& operator=(const MeshActor&) = delete;

  // The number of triangles decides whether they are taken again: batches of one scene keep them.
  void set_mesh(const MeshBatch& mesh, bool same_triangles);
  // Three a vertex of the last mesh.
  void set_colours(const std::vector<std::uint8_t>& colours);

  void set_visible(bool visible);
  void set_opacity(double opacity);
  void set_shine(double specular);
  void show_front_only(bool only);
  void set_clip(vtkPlane* plane);  // null: none

  // More opaque towards its edge, where it is seen aslant.
  void set_rim(double opacity_at_edge);
  // Before everything else in the picture, whatever its depth.
  void pull_to_front();
  // What is cut open shows its inside as one flat colour, as if it were solid.
  void fill_sections();
  // Flat colour, whatever the light.
  void set_unlit();

  vtkActor* actor() const;

 private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace endplate::ui
