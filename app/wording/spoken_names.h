// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/marks/mark.h"
#include "core/soundings/verdict.h"

#include <QString>

namespace wording {

/// Why a sounding is set aside, as it stands on the screen: "no echo", "position jumped".
[[nodiscard]] QString spoken(soundings::Verdict verdict);

/// The place itself or where from it: "Gannick Bar", "Gannick Bar, 120 m NE".
[[nodiscard]] QString said(const marks::NearPlace& near, const Words& words);

/// The user's name of the mark, else the named place near it, "Gannick Bar" or "Gannick Bar, 120 m
/// NE", else its section's; empty where it has none of them.
[[nodiscard]] QString calledBy(const marks::Mark& mark, const Words& words);

} // namespace wording
