// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/refused_words.h"

#include "app/wording/counted_words.h"
#include "app/wording/tongue.h"
#include "app/wording/words.h"

#include <QStringList>

#include <algorithm>
#include <map>
#include <vector>

namespace wording {

namespace {

/// What a row is called that is refused for this reason, after "3 rows ".
QString why(const std::string& reason) {
    static const std::map<std::string, const char*> words{
        {"above_surface", QT_TRANSLATE_NOOP("wording", "above the water")},
        {"bad_checksum", QT_TRANSLATE_NOOP("wording", "with a wrong check sum")},
        {"bad_position", QT_TRANSLATE_NOOP("wording", "with a position that cannot be read")},
        {"bad_time", QT_TRANSLATE_NOOP("wording", "with a time that cannot be read")},
        {"entity", QT_TRANSLATE_NOOP("wording", "with an XML entity, which is not followed")},
        {"impossible_depth", QT_TRANSLATE_NOOP("wording", "with a depth that cannot be")},
        {"impossible_height", QT_TRANSLATE_NOOP("wording", "with a height that cannot be")},
        {"impossible_time", QT_TRANSLATE_NOOP("wording", "with a time that cannot be")},
        {"negative_depth", QT_TRANSLATE_NOOP("wording", "with a depth below nought")},
        {"negative_height", QT_TRANSLATE_NOOP("wording", "with a height below nought")},
        {"no_day", QT_TRANSLATE_NOOP("wording", "without a day")},
        {"no_depth", QT_TRANSLATE_NOOP("wording", "without a depth")},
        {"no_position", QT_TRANSLATE_NOOP("wording", "without a position")},
        {"no_stay_number", QT_TRANSLATE_NOOP("wording", "without the number of a stay")},
        {"no_such_stay", QT_TRANSLATE_NOOP("wording", "of a stay that is not there")},
        {"not_a_number", QT_TRANSLATE_NOOP("wording", "with something that is no number")},
        {"off_earth", QT_TRANSLATE_NOOP("wording", "with a position that is not on the Earth")},
        {"same_stay_twice", QT_TRANSLATE_NOOP("wording", "of a stay that was there before")},
        {"truncated", QT_TRANSLATE_NOOP("wording", "that end too early")},
        {"unknown_bottom", QT_TRANSLATE_NOOP("wording", "with an unknown kind of bottom")},
        {"unknown_kind", QT_TRANSLATE_NOOP("wording", "of an unknown kind")},
        {"void_fix", QT_TRANSLATE_NOOP("wording", "without a fix of the receiver")},
        {"wrong_columns", QT_TRANSLATE_NOOP("wording", "with too few or too many columns")},
        {"zero_position",
         QT_TRANSLATE_NOOP("wording", "at 0° 0°, which a receiver without a fix says")}};
    const auto found = words.find(reason);
    return found == words.end() ? QString::fromStdString(reason) : Tongue::tr(found->second);
}

} // namespace

QString refusedRows(const readers::ReadingReport& report) {
    using Reason = std::pair<const std::string, readers::RefusedRows>;
    std::vector<const Reason*> reasons;
    for (const Reason& reason : report.refused) {
        reasons.push_back(&reason);
    }
    std::ranges::stable_sort(reasons, std::greater(),
                             [](const Reason* reason) { return reason->second.count; });
    QStringList said;
    for (const Reason* reason : reasons) {
        const auto& [count, line, text] = reason->second;
        said += Tongue::tr("%1 %2 (line %3: '%4')")
                    .arg(Words::count(count), why(reason->first), Words::count(line),
                         QString::fromStdString(text));
    }
    return said.join(QStringLiteral(", "));
}

QString notUsed(const readers::ReadingReport& report) {
    QStringList said;
    if (const std::size_t rows = report.refusedCount(); rows > 0) {
        said += Tongue::tr("%1 not used: %2.")
                    .arg(rowsCounted(static_cast<qint64>(rows)), refusedRows(report));
    }
    if (const auto& fields = report.badFields; !fields.empty()) {
        said += Tongue::tr("%1 left empty (first: %2 '%3' in row %4).")
                    .arg(fieldsCounted(static_cast<qint64>(fields.size())),
                         QString::fromStdString(fields[0].column),
                         QString::fromStdString(fields[0].text), Words::count(fields[0].line));
    }
    return said.join(QLatin1Char(' '));
}

} // namespace wording
