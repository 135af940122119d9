// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/belief_record.h"

#include <QString>

namespace wording {

/// What the user said of a reason and what his log says of it, with how sure that is, in one
/// sentence. \param hasLog whether any stay of the log counts.
[[nodiscard]] QString said(const marks::BeliefRecord& record, bool hasLog);

} // namespace wording
