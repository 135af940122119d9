// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/derived.h"
#include "core/water/document/water.h"

namespace water {

/// Chooses bands, limit and size of section for the water as drawn, as far as the user has not;
/// what he has chosen is taken as it is. Nothing changes where nothing is drawn.
void chooseScale(const Water& water, Derived& derived);

} // namespace water
