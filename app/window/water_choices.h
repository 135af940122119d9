// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "app/preferences/preferences.h"

#include <QString>

#include <vector>

namespace window {

/// A water that can be opened again, and what it is called in lists.
struct WaterChoice {
    QString path;
    QString words;
};

/// The waters opened lately, the last one first, then all others that nobody has named: none of
/// those is ever lost out of sight.
[[nodiscard]] std::vector<WaterChoice> waterChoices(const preferences::Preferences& preferences,
                                                    const open_water::OpenWater& open);

} // namespace window
