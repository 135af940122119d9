// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

namespace store {

/// Gives the connection the SQL functions ST_MinX, ST_MaxX, ST_MinY, ST_MaxY and ST_IsEmpty, which
/// the spatial index of GeoPackage 1.3 (annex F.3) calls: once another program has laid such an
/// index over a layer, nothing can be saved without them.
void addSpatialFunctions(Connection& connection);

} // namespace store
