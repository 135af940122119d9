// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/error.h"
#include "core/water/document/water.h"

#include <QString>

#include <optional>
#include <set>

namespace window {

/// "survey days, plan".
[[nodiscard]] QString partsInWords(const std::set<water::Part>& parts);

/// "Not kept yet: plan. a.gpkg: the disk is full; make room. It is tried again every few seconds."
/// Empty where nothing failed. \param isTriedAgain whether it is.
[[nodiscard]] QString notKeptWords(const std::set<water::Part>& parts,
                                   const std::optional<base::Error>& whyNot, bool isTriedAgain);

} // namespace window
