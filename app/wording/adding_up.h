// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"

#include <QStringList>

#include <cstdint>
#include <span>
#include <vector>

namespace wording {

/// The terms as whole numbers that add up to the rounded sum: each within one of its term, and a
/// whole term stays as it is. Those whose rounding went farthest the wrong way give way.
[[nodiscard]] std::vector<std::int64_t> roundedToAddUp(std::span<const double> terms);

/// A sum as it is written below one another, in the user's unit: the first amount, what is added to
/// it with its sign, and last what it comes to. With two decimals each, the figures add up as they
/// stand: "4.20 m", "−0.09 m", "+0.25 m", "4.36 m".
[[nodiscard]] QStringList sumWritten(const Words& words, std::span<const units::Length> terms);

} // namespace wording
