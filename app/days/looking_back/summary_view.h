// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/water/document/derived.h"
#include "core/water/questions/review_log.h"

#include <QStringList>

namespace days::looking_back {

/// What the log comes to, in three to five sentences, what matters most first: by section where
/// there are any, else by mark. \return the errors of water::reviewLog() and reviewHours().
[[nodiscard]] base::Result<QStringList> inShort(const water::Water& water,
                                                const water::Derived& derived,
                                                const water::ReviewQuestion& question,
                                                const wording::Words& words,
                                                base::Progress& progress);

/// Which part of the log that was: "Of pike from 5.00 kg, with smelt, autumn." Empty for all of it.
[[nodiscard]] QString askedWords(const water::ReviewQuestion& question,
                                 const wording::Words& words);

} // namespace days::looking_back
