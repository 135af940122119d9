// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/derived.h"
#include "core/water/document/water.h"

namespace water {

/// Notes the numbers of the sections in the water that they were made of, before anybody is shown
/// them: from then on no other water has them. Sections that were numbered before the water learnt
/// of other numbers (a map taken back by an undo, or made while another was on its way) are
/// numbered anew first. \return whether something was noted that was not known.
bool noteNumbers(Water& water, Derived& derived);

} // namespace water
