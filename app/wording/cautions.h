// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/marks/mark.h"
#include "core/water/document/day_caution.h"

#include <QStringList>

#include <vector>

namespace wording {

// What is to be minded, in whole sentences.

[[nodiscard]] QString said(const anchoring::Caution& caution, const Words& words);
[[nodiscard]] QString said(const marks::Caution& caution, const Words& words);
[[nodiscard]] QString said(const water::DayCaution& caution, const Words& words);
/// The cold alone, without what else the water does.
[[nodiscard]] QString said(const water::ColdWater& cold, const Words& words);
[[nodiscard]] QString said(const water::DayRule& rule);
[[nodiscard]] QString said(water::FishCare care, const Words& words);

/// Of the place, then of its anchors, each once.
[[nodiscard]] QStringList cautionsOf(const marks::Mark& mark, const Words& words);

} // namespace wording
