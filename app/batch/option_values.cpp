// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/option_values.h"

#include "core/base/number_text.h"

#include <sstream>
#include <vector>

#include <fmt/format.h>

namespace batch {

using base::Result;

namespace {

std::unexpected<base::Error> wrong(const std::string& option, const std::string& text,
                                   const std::string& takes) {
    return base::fail(base::ErrorKind::wrongUse, "'" + text + "' is not what it takes", option,
                      "give " + takes);
}

std::vector<std::string> split(const std::string& text, char at) {
    std::vector<std::string> parts;
    std::istringstream stream(text);
    for (std::string part; std::getline(stream, part, at);) {
        parts.push_back(part);
    }
    return parts;
}

/// "key=value" pairs behind commas; nothing where one is none.
std::optional<std::vector<std::pair<std::string, std::string>>> pairsFrom(const std::string& text) {
    std::vector<std::pair<std::string, std::string>> pairs;
    for (const std::string& part : split(text, ',')) {
        const auto at = part.find('=');
        if (at == std::string::npos || at == 0 || at + 1 == part.size()) {
            return std::nullopt;
        }
        pairs.emplace_back(part.substr(0, at), part.substr(at + 1));
    }
    return pairs;
}

} // namespace

Result<readers::ColumnChoice> columnsFrom(const std::string& text) {
    readers::ColumnChoice choice;
    const auto pairs = pairsFrom(text);
    if (!pairs) {
        return wrong("--columns", text, "x=COL,y=COL,depth=COL,time=COL");
    }
    for (const auto& [role, column] : *pairs) {
        if (role == "x") {
            choice.x = column;
        } else if (role == "y") {
            choice.y = column;
        } else if (role == "depth") {
            choice.depth = column;
        } else if (role == "time") {
            choice.time = column;
        } else {
            return wrong("--columns", role, "the roles x, y, depth and time");
        }
    }
    return choice;
}

Result<int> epsgFrom(const std::string& text) {
    const std::string number = base::lowerCase(text).starts_with("epsg:") ? text.substr(5) : text;
    const auto code = base::wholeNumberFrom(number);
    if (!code || *code < 1024 || *code > 100000) {
        return wrong("--crs", text, "EPSG:N, for example EPSG:25833");
    }
    return static_cast<int>(*code);
}

Result<readers::DepthUnit> unitFrom(const std::string& text) {
    const auto unit = readers::depthUnitNamed(text);
    if (!unit) {
        return wrong("--unit", text, "m, ft or fathom");
    }
    return *unit;
}

Result<void> takeBands(const std::string& edges, std::optional<double> limit_m,
                       water::Settings& settings) {
    const units::Depth known =
        settings.bands ? settings.bands->limit()
                       : settings.limit.value_or(contours::usualLimit(settings.countsIn));
    const units::Depth limit = limit_m ? units::Depth::metres(*limit_m) : known;
    if (!contours::Bands::make({units::Depth::metres(1.0)}, limit)) {
        return wrong("--limit-depth", fmt::format("{}", *limit_m), "a depth in metres, as 9");
    }
    std::vector<units::Depth> depths;
    for (const std::string& part : edges.empty() ? std::vector<std::string>() : split(edges, ',')) {
        const auto metres = base::numberFrom(part);
        if (!metres) {
            return wrong("--band-edges", part, "depths in metres, as 2,4,6");
        }
        depths.push_back(units::Depth::metres(*metres));
    }
    if (depths.empty() && !settings.bands) {
        settings.limit = limit_m ? std::optional(limit) : settings.limit;
        return {};
    }
    auto bands = contours::Bands::make(depths.empty() ? settings.bands->edges() : depths, limit);
    if (!bands) {
        base::Error error = bands.error();
        error.where = "--band-edges";
        return std::unexpected(std::move(error));
    }
    settings.bands = *bands;
    return {};
}

Result<geo::LonLat> placeFrom(const std::string& option, const std::string& text) {
    const auto parts = split(text, ',');
    if (parts.size() == 2) {
        const auto lon = base::numberFrom(parts[0]);
        const auto lat = base::numberFrom(parts[1]);
        if (lon && lat && geo::isOnEarth({*lon, *lat})) {
            return geo::LonLat{*lon, *lat};
        }
    }
    return wrong(option, text, "longitude,latitude in degrees");
}

Result<water::PinnedMark> keptMarkFrom(const std::string& option, const std::string& text) {
    const std::size_t second = text.find(',', std::min(text.size(), text.find(',') + 1));
    const auto place = placeFrom(option, text.substr(0, second));
    if (!place) {
        return std::unexpected(place.error());
    }
    const std::string name = second == std::string::npos ? "" : text.substr(second + 1);
    return water::PinnedMark{std::string(base::trimmed(name)), *place};
}

Result<BanAsked> banFrom(const std::string& option, const std::string& text) {
    const std::size_t second = text.find(',', std::min(text.size(), text.find(',') + 1));
    const auto place = placeFrom(option, text.substr(0, second));
    if (!place) {
        return std::unexpected(place.error());
    }
    if (second == std::string::npos) {
        return BanAsked{*place, std::nullopt};
    }
    const auto radius_m = base::numberFrom(base::trimmed(text.substr(second + 1)));
    if (!radius_m) {
        return wrong(option, text, "longitude,latitude,radius, the radius in metres");
    }
    return BanAsked{*place, units::Length::metres(*radius_m)};
}

Result<units::Day> dayFrom(const std::string& option, const std::string& text) {
    const auto day = units::dayFrom(text);
    if (!day) {
        return wrong(option, text, "a date as 2026-11-27");
    }
    return *day;
}

Result<std::chrono::seconds> timeOfDayFrom(const std::string& option, const std::string& text) {
    const auto time = units::timeOfDayFrom(text);
    if (!time) {
        return wrong(option, text, "a time as 07:40");
    }
    return *time;
}

Result<void> takeTime(const std::string& option, const std::string& text,
                      std::chrono::seconds& time) {
    if (text.empty()) {
        return {};
    }
    const auto said = timeOfDayFrom(option, text);
    if (!said) {
        return std::unexpected(said.error());
    }
    time = *said;
    return {};
}

Result<marks::Weights> weightsFrom(const std::string& text, marks::Weights before) {
    const auto pairs = pairsFrom(text);
    if (!pairs) {
        return wrong("--weights", text, "factor=W,factor=W");
    }
    for (const auto& [name, number] : *pairs) {
        const auto kind = marks::factorNamed(name);
        const auto weight = base::numberFrom(number);
        if (!kind) {
            std::string names;
            for (const marks::FactorKind known : marks::allFactorKinds) {
                names += (names.empty() ? "" : ", ") + std::string(marks::nameOf(known));
            }
            return wrong("--weights", name, "one of " + names);
        }
        if (!weight || *weight < 0.0) {
            return wrong("--weights", number, "a weight from 0 up");
        }
        before.set(*kind, *weight);
    }
    return before;
}

} // namespace batch
