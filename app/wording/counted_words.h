// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace wording {

// So many of something: "1 trip", "41,208 soundings". In a language with cases they stand alone or
// after a colon, and are not bent by the sentence around them.
[[nodiscard]] QString tripsCounted(qint64 n);
[[nodiscard]] QString staysCounted(qint64 n);
[[nodiscard]] QString fishCounted(qint64 n);
[[nodiscard]] QString monthsCounted(qint64 n);
[[nodiscard]] QString sectionsCounted(qint64 n);
[[nodiscard]] QString marksCounted(qint64 n);
[[nodiscard]] QString linesCounted(qint64 n);
[[nodiscard]] QString notesCounted(qint64 n);
[[nodiscard]] QString rodsCounted(qint64 n);
[[nodiscard]] QString rowsCounted(qint64 n);
[[nodiscard]] QString fieldsCounted(qint64 n);
[[nodiscard]] QString islandsCounted(qint64 n); ///< "no island" where there is none.
[[nodiscard]] QString surveyDaysCounted(qint64 n);
[[nodiscard]] QString soundingsCounted(qint64 n);

} // namespace wording
