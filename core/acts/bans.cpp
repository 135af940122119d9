// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/bans.h"

#include "core/geo/outline.h"

#include <utility>

namespace acts {

using base::ErrorKind;
using base::Result;
using water::BannedWater;
using water::PinnedMark;
using water::Water;

namespace {

std::unexpected<base::Error> noSuchBan() {
    return base::fail(ErrorKind::wrongUse, "there is no such banned water", "banned water",
                      "choose one of the list");
}

} // namespace

Result<Water> banWater(const Water& water, const BannedWater& banned) {
    if (!water.frame) {
        return base::fail(ErrorKind::wrongUse, "nothing can be banned before there is a water",
                          "banned water", "bring in soundings or a shoreline first");
    }
    const std::vector<geo::LonLatPiece> pieces{{banned.ring, {}}};
    if (const auto outline = geo::Outline::make(pieces, *water.frame); !outline) {
        base::Error error = outline.error();
        error.where = "banned water" + (error.where.empty() ? "" : ", " + error.where);
        return std::unexpected(std::move(error));
    }
    Water after = water;
    after.banned.push_back(banned);
    return after;
}

Result<Water> banRound(const Water& water, geo::LonLat place, units::Length radius,
                       const std::string& name) {
    if (!(radius.inMetres() >= 1.0 && radius.inMetres() <= 2000.0)) {
        return base::fail(ErrorKind::wrongUse, "so much water round a mark cannot be banned",
                          "banned water", "choose a radius of 1 m to 2 km");
    }
    auto after = banWater(water, water::bannedRound(place, radius, name));
    if (after) {
        std::erase_if(after->pinnedMarks,
                      [place](const PinnedMark& mark) { return mark.place == place; });
    }
    return after;
}

Result<Water> liftBan(const Water& water, std::size_t which) {
    if (which >= water.banned.size()) {
        return noSuchBan();
    }
    Water after = water;
    after.banned.erase(after.banned.begin() + static_cast<std::ptrdiff_t>(which));
    return after;
}

Result<Water> nameBan(const Water& water, std::size_t which, const std::string& name) {
    if (which >= water.banned.size()) {
        return noSuchBan();
    }
    Water after = water;
    after.banned[which].name = name;
    return after;
}

} // namespace acts
