// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/water/steps/bring_in_log.h"
#include "core/water/steps/bring_in_partner.h"

#include <QStringList>

namespace wording {

/// "12 stays brought in, 3 updated, 2 known already."
[[nodiscard]] QString broughtIn(const water::LogBroughtIn& log);

/// What of the file is not in the log now, and why: rows, fields, stays that meet others. Empty
/// where nothing was lost. \param water that it was brought into.
[[nodiscard]] QString leftOutOf(const water::LogBroughtIn& log, const water::Water& water);

/// What of a partner's water was not brought in or needs looking at, a sentence each.
[[nodiscard]] QStringList notesOn(const water::PartnerBroughtIn& partner);

} // namespace wording
