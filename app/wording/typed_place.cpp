// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/typed_place.h"

#include "app/wording/typed_amount.h"
#include "core/geo/water_frame.h"
#include "core/readers/table_text.h"

#include <QStringList>

#include <algorithm>

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

/// A bearing and a length with its unit, either of them first.
std::optional<geo::Course> courseTyped(const QString& text, preferences::UnitSystem units) {
    const auto course = [units](const QString& bearing,
                                const QString& length) -> std::optional<geo::Course> {
        const auto towards = bearingTyped(bearing);
        const auto distance = lengthTyped(length, units);
        const bool hasUnit = std::ranges::any_of(length, [](QChar one) { return one.isLetter(); });
        return towards && distance && *distance >= units::Length() && hasUnit
                   ? std::optional(geo::Course{*distance, *towards})
                   : std::nullopt;
    };
    const QStringList words = QString(text)
                                  .replace(QStringLiteral(", "), QStringLiteral(" "))
                                  .split(' ', Qt::SkipEmptyParts);
    if (words.size() < 2) {
        return std::nullopt;
    }
    const auto first = course(words.first(), words.mid(1).join(' '));
    return first ? first : course(words.last(), words.first(words.size() - 1).join(' '));
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

std::optional<geo::LonLat> baitPlaceTyped(const QString& text, geo::LonLat boat,
                                          preferences::UnitSystem units) {
    if (const auto course = courseTyped(text, units)) {
        return course->distance <= farthestBait ? std::optional(geo::destination(boat, *course))
                                                : std::nullopt;
    }
    const auto place = placeTyped(text);
    const bool isNear = place && geo::courseBetween(boat, *place).distance <= farthestBait;
    return isNear ? place : std::nullopt;
}

QString baitPlaceWords(geo::LonLat bait, geo::LonLat boat, const Words& words) {
    const geo::Course course = geo::courseBetween(boat, bait);
    return Words::bearing(course.bearing) + ' ' + words.lengthTo(course.distance, 0);
}

} // namespace wording
