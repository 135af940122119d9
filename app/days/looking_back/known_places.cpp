// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/known_places.h"

#include "app/wording/spoken_names.h"
#include "app/wording/typed_place.h"

namespace days::looking_back {

namespace {

/// A boat swings as far on its ropes. Our choice (no source).
constexpr double ofTheMark_m = 25.0;

} // namespace

QString numbered(int rank, const QString& called) {
    return called.isEmpty() ? QString::number(rank) : QStringLiteral("%1 %2").arg(rank).arg(called);
}

std::vector<KnownPlace> knownPlaces(const water::Water& water, const water::PlannedDay* planned,
                                    const wording::Words& words) {
    std::vector<KnownPlace> places;
    if (planned != nullptr) {
        for (const marks::Mark& mark : planned->marks) {
            const QString name = numbered(mark.rank, wording::calledBy(mark, words));
            places.push_back({name, mark.lonLat, mark.rank});
        }
    }
    for (const water::PinnedMark& mark : water.pinnedMarks) {
        if (!mark.name.empty()) {
            places.push_back({QString::fromStdString(mark.name), mark.place, {}});
        }
    }
    for (const water::NamedPlace& place : water.places) {
        places.push_back({QString::fromStdString(place.name), place.place, {}});
    }
    return places;
}

QStringList namesOf(const std::vector<KnownPlace>& places) {
    QStringList names;
    for (const KnownPlace& place : places) {
        names += place.name;
    }
    return names;
}

std::optional<geo::LonLat> placeMeant(const QString& text, const std::vector<KnownPlace>& places) {
    const QString whole = text.trimmed();
    bool isNumber = false;
    const int number = whole.toInt(&isNumber);
    for (const KnownPlace& place : places) {
        const bool isItsNumber = isNumber && place.rank == number;
        if (isItsNumber || place.name.compare(whole, Qt::CaseInsensitive) == 0) {
            return place.place;
        }
    }
    return wording::placeTyped(whole);
}

PlaceNames::PlaceNames(const water::Water& water) : frame_(water.frame) {
    if (!frame_) {
        return;
    }
    for (const water::PinnedMark& mark : water.pinnedMarks) {
        if (!mark.name.empty()) {
            marks_.push_back({mark.name, frame_->toWater(mark.place)});
        }
    }
    places_ = water::placedNames(water);
}

QString PlaceNames::of(geo::LonLat place, const wording::Words& words) const {
    if (!frame_ || (marks_.empty() && places_.empty())) {
        return {};
    }
    const geo::WaterPoint at = frame_->toWater(place);
    for (const water::PlacedName& mark : marks_) {
        if (geo::distance_m(mark.at, at) <= ofTheMark_m) {
            return QString::fromStdString(mark.name);
        }
    }
    const auto near = water::nearestOf(places_, at);
    return near ? wording::said(*near, words) : QString();
}

} // namespace days::looking_back
