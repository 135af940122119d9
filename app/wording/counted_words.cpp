// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/counted_words.h"

#include "app/wording/tongue.h"

namespace wording {

QString tripsCounted(qint64 n) {
    return Tongue::counted("%n trips", "%n trip", n);
}

QString staysCounted(qint64 n) {
    return Tongue::counted("%n stays", "%n stay", n);
}

QString fishCounted(qint64 n) {
    return Tongue::counted("%n fish", "%n fish", n);
}

QString monthsCounted(qint64 n) {
    return Tongue::counted("%n months", "%n month", n);
}

QString sectionsCounted(qint64 n) {
    return Tongue::counted("%n sections", "%n section", n);
}

QString marksCounted(qint64 n) {
    return Tongue::counted("%n marks", "%n mark", n);
}

QString linesCounted(qint64 n) {
    return Tongue::counted("%n lines", "%n line", n);
}

QString notesCounted(qint64 n) {
    return Tongue::counted("%n notes", "%n note", n);
}

QString rodsCounted(qint64 n) {
    return Tongue::counted("%n rods", "%n rod", n);
}

QString rowsCounted(qint64 n) {
    return Tongue::counted("%n rows", "%n row", n);
}

QString fieldsCounted(qint64 n) {
    return Tongue::counted("%n fields", "%n field", n);
}

QString islandsCounted(qint64 n) {
    return n == 0 ? Tongue::tr("no island") : Tongue::counted("%n islands", "%n island", n);
}

QString surveyDaysCounted(qint64 n) {
    return Tongue::counted("%n survey days", "%n survey day", n);
}

QString soundingsCounted(qint64 n) {
    return Tongue::counted("%n soundings", "%n sounding", n);
}

} // namespace wording
