// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/typed_place.h"

#include "core/readers/table_text.h"

#include <QStringList>

namespace wording {

namespace {

/// Where longitude may begin: behind a comma, a blank, or the letter of the latitude.
std::optional<geo::LonLat> cutAt(const QString& text, qsizetype at) {
    const QString first = text.left(at).trimmed();
    QString second = text.mid(at).trimmed();
    if (second.startsWith(',') || second.startsWith(';')) {
        second = second.mid(1).trimmed();
    }
    const bool isTurned =
        first.contains('E', Qt::CaseInsensitive) || first.contains('W', Qt::CaseInsensitive) ||
        second.contains('N', Qt::CaseInsensitive) || second.contains('S', Qt::CaseInsensitive);
    const auto lat_deg = readers::angleFrom(first.toStdString(), '.');
    const auto lon_deg = readers::angleFrom(second.toStdString(), '.');
    if (isTurned || !lat_deg || !lon_deg) {
        return std::nullopt;
    }
    const geo::LonLat place{*lon_deg, *lat_deg};
    return geo::isOnEarth(place) ? std::optional(place) : std::nullopt;
}

} // namespace

std::optional<geo::LonLat> placeTyped(const QString& text) {
    const QString whole = text.trimmed();
    for (const QChar mark : {QChar(','), QChar(';')}) {
        if (whole.count(mark) == 1) {
            return cutAt(whole, whole.indexOf(mark));
        }
    }
    // The cut in the middle is tried first: both angles are written in one way.
    const QStringList words = whole.split(' ', Qt::SkipEmptyParts);
    for (qsizetype off = 0; off < words.size(); ++off) {
        const qsizetype middle = words.size() / 2 + (off % 2 == 0 ? off / 2 : -(off + 1) / 2);
        if (middle < 1 || middle >= words.size()) {
            continue;
        }
        const QString first = words.mid(0, middle).join(' ');
        if (const auto place = cutAt(first + ' ' + words.mid(middle).join(' '), first.size())) {
            return place;
        }
    }
    return std::nullopt;
}

} // namespace wording
