#pragma once
// A column of single precision whose numbers are written before they are read, so that making room
// for them need not write zeros first. The memory is TBB's, which keeps what is given back for the
// next forecast; the usual allocator returns long columns to the system, which hands them out again
// page by page.
#include <tbb/cache_aligned_allocator.h>

#include <utility>
#include <vector>

namespace endplate::recovery {

template <class Value>
struct Unfilled : tbb::cache_aligned_allocator<Value> {
  template <class Other>
  struct rebind {                   // NOLINT(readability-identifier-naming): the library's name
    using other = Unfilled<Other>;  // NOLINT(readability-identifier-naming): likewise
  };
  void construct(Value* at) const noexcept { ::new (static_cast<void*>(at)) Value; }
  template <class... Arguments>
  void construct(Value* at, Arguments&&... arguments) const {
    ::new (static_cast<void*>(at)) Value(std::forward<Arguments>(arguments)...);
  }
};

using FloatColumn = std::vector<float, Unfilled<float>>;

}  // namespace endplate::recovery
