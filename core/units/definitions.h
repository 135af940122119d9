// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace units {

// Exact by definition: International Yard and Pound Agreement of 1959; acre of 43,560 square
// international feet.
inline constexpr double metresPerFoot = 0.3048;
inline constexpr double metresPerFathom = 6.0 * metresPerFoot;
inline constexpr double squareMetresPerAcre = 43560.0 * metresPerFoot * metresPerFoot;
inline constexpr double kilogramsPerPound = 0.45359237;

} // namespace units
