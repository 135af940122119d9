// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/water_store.h"

#include <optional>

namespace store {

/// The drawing in the place of the one that the file held, inside the caller's transaction.
void keepDrawing(Connection& connection, const surface::DrawnWater& drawn,
                 const geo::WaterFrame& frame, water::Stamp stamp);

/// Nothing where there is none, or where what is kept contradicts itself or the outline: a drawing
/// can always be made again.
[[nodiscard]] std::optional<KeptDrawing> recallDrawing(Connection& connection,
                                                       const geo::Outline& outline);

/// Whether the drawing that the file holds can be read, and says nothing but depths. Whether it
/// lies on the present shore is another matter: that may have been changed since.
[[nodiscard]] bool isDrawingWhole(Connection& connection);

} // namespace store
