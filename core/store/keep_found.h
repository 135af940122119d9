// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/marks/told_marks.h"
#include "core/store/connection.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <span>

namespace store {

/// What was found in the water, for others to see, in the place of what the file held of it, inside
/// the caller's transaction. The water must have a frame.
void keepFound(Connection& connection, const water::Water& water, const water::Derived& found,
               const marks::ToldMarks& told, base::Progress& progress);

} // namespace store
