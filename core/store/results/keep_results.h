// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/water_store.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"
#include "core/water/steps/stamps.h"

#include <span>

namespace store {

/// What was made in the keptSteps, with the stamp of what it was made from, inside the caller's
/// transaction; what the file held of them goes unless it is the same. Nothing is kept of a water
/// whose shore is assumed or which is not drawn.
void keepResults(Connection& connection, const water::Derived& found);

/// Puts into `derived` what the file holds of `steps` and is made from just this water. What is not
/// whole, or contradicts the drawing or the soundings, is left out: it can always be made again.
/// \param derived with the outline and the drawing that were kept; without a drawing nothing is
/// put.
void recallResults(Connection& connection, const water::Water& water, const water::Stamps& wanted,
                   std::span<const water::Step> steps, water::Derived& derived);

} // namespace store
