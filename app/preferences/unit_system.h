// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace preferences {

/// The user's choice, everywhere at once: metres, hectares, kilograms; or feet, acres, pounds and
/// ounces.
enum class UnitSystem { metric, imperial };

} // namespace preferences
