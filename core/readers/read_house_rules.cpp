// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_house_rules.h"

#include "core/base/harmless_text.h"
#include "core/base/number_text.h"
#include "core/readers/whole_text.h"

#include <cmath>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace readers {

namespace {

using base::ErrorKind;
using nlohmann::json;

/// What makes no sense, by the entry's name; thrown within this file alone.
struct BadEntry {
    std::string entry;
    std::string what;
};

geo::LonLat placeOf(const json& pair, const std::string& entry) {
    if (!pair.is_array() || pair.size() < 2 || !pair[0].is_number() || !pair[1].is_number()) {
        throw BadEntry{entry, "a corner is no pair of longitude and latitude"};
    }
    const geo::LonLat place{pair[0].get<double>(), pair[1].get<double>()};
    if (!geo::isOnEarth(place)) {
        throw BadEntry{entry, "a corner is not on the Earth"};
    }
    return place;
}

geo::LonLatPiece pieceOf(const json& rings, const std::string& entry) {
    geo::LonLatPiece piece;
    for (const json& ring : rings) {
        geo::LonLatRing places;
        for (const json& pair : ring) {
            places.push_back(placeOf(pair, entry));
        }
        while (places.size() > 1 && places.front() == places.back()) {
            places.pop_back();
        }
        if (places.size() < 3) {
            throw BadEntry{entry, "a ring has fewer than three corners"};
        }
        if (piece.outer.empty()) {
            piece.outer = std::move(places);
        } else {
            piece.islands.push_back(std::move(places));
        }
    }
    if (piece.outer.empty()) {
        throw BadEntry{entry, "a polygon has no ring"};
    }
    return piece;
}

logbook::ClosedWater closedWaterOf(const json& entry, std::size_t number) {
    const std::string where = fmt::format("closed_waters, entry {}", number);
    logbook::ClosedWater closed;
    closed.name = base::harmless(entry.value("name", fmt::format("closed water {}", number)));
    const json geometry = entry.value("geometry", json::object());
    const std::string type = geometry.value("type", "");
    const json rings = geometry.value("coordinates", json::array());
    if (type == "Polygon") {
        closed.pieces.push_back(pieceOf(rings, where));
    } else if (type == "MultiPolygon") {
        for (const json& polygon : rings) {
            closed.pieces.push_back(pieceOf(polygon, where));
        }
    } else {
        throw BadEntry{where, "its geometry is no Polygon and no MultiPolygon"};
    }
    return closed;
}

std::chrono::month_day monthDayOf(const json& season, const char* key) {
    const std::string text = season.value(key, "");
    const auto dash = text.find('-');
    const auto month = base::wholeNumberFrom(text.substr(0, dash));
    const auto day =
        dash == std::string::npos ? std::nullopt : base::wholeNumberFrom(text.substr(dash + 1));
    const std::chrono::month_day read(
        std::chrono::month(static_cast<unsigned>(month.value_or(0) & 0xFF)),
        std::chrono::day(static_cast<unsigned>(day.value_or(0) & 0xFF)));
    if (!month || !day || *month < 1 || *day < 1 || !read.ok()) {
        throw BadEntry{fmt::format("season, {}", key), fmt::format("'{}' is no MM-DD", text)};
    }
    return read;
}

/// A whole number within its range; other kinds of JSON cannot be cast to one.
int wholeOf(const json& value, const std::string& entry, int least, int most) {
    const double number = value.is_number() ? value.get<double>() : double{NAN};
    if (!(number >= least && number <= most) || number != std::floor(number)) {
        throw BadEntry{entry, fmt::format("it is no whole number from {} to {}", least, most)};
    }
    return static_cast<int>(number);
}

std::string speciesNote(const json& species) {
    std::string note = species.value("name", "fish");
    if (species.contains("keep")) {
        const int keep = wholeOf(species["keep"], "species, keep", 0, 10000);
        note += keep == 0 ? ": none may be kept" : fmt::format(": {} may be kept", keep);
    }
    if (species.contains("least_length_mm")) {
        note += fmt::format(", none below {} mm", wholeOf(species["least_length_mm"],
                                                          "species, least_length_mm", 0, 10000));
    }
    if (species.contains("note")) {
        note += " (" + base::harmless(species["note"].get<std::string>()) + ")";
    }
    return note;
}

logbook::HouseRules rulesOf(const json& all) {
    logbook::HouseRules rules;
    if (all.contains("rods_per_boat")) {
        rules.rodLimit = wholeOf(all["rods_per_boat"], "rods_per_boat", 1, 100);
    }
    if (all.contains("season")) {
        rules.season =
            logbook::Season{monthDayOf(all["season"], "from"), monthDayOf(all["season"], "to")};
    }
    std::size_t number = 0;
    for (const json& closed : all.value("closed_waters", json::array())) {
        rules.closed.push_back(closedWaterOf(closed, ++number));
    }
    for (const json& species : all.value("species", json::array())) {
        rules.notes.push_back(speciesNote(species));
    }
    for (const json& note : all.value("notes", json::array())) {
        rules.notes.push_back(base::harmless(note.get<std::string>()));
    }
    return rules;
}

} // namespace

base::Result<logbook::HouseRules> readHouseRules(const std::filesystem::path& path) {
    const auto text = wholeText(path);
    if (!text) {
        return std::unexpected(text.error());
    }
    try {
        return rulesOf(json::parse(*text));
    } catch (const BadEntry& bad) {
        return base::fail(ErrorKind::unusableInput, bad.what,
                          path.filename().string() + ", " + bad.entry, "put that entry right");
    } catch (const json::exception& fault) {
        return base::fail(ErrorKind::unusableInput,
                          fmt::format("the house rules cannot be read ({})", fault.what()),
                          path.string(),
                          "give JSON as the sample survey's house-rules.json has it");
    }
}

} // namespace readers
