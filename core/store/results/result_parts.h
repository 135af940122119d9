// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/results/result_bytes.h"
#include "core/structure/zone.h"
#include "core/units/area.h"
#include "core/units/depth.h"
#include "core/units/length.h"
#include "core/units/volume.h"

#include <algorithm>
#include <cmath>
#include <concepts>
#include <optional>
#include <string>
#include <vector>

namespace store {

template <class T>
concept ANumber = std::is_arithmetic_v<T> && !std::is_same_v<std::remove_const_t<T>, bool>;
template <class T>
concept Choice = std::is_enum_v<T>;
template <class T, class... Kinds>
concept OneOf = (std::same_as<std::remove_const_t<T>, Kinds> || ...);
template <class T>
concept Optional = requires(T& value) { value.has_value(); };
template <class T>
concept List = requires(T& list) {
    list.size();
    list.begin();
    typename T::value_type;
};

/// The last value of each choice that is kept: what is beyond was never written.
constexpr std::uint8_t lastOf(structure::ZoneKind /*kind*/) {
    return static_cast<std::uint8_t>(structure::allZoneKinds.back());
}
constexpr std::uint8_t lastOf(soundings::Verdict /*verdict*/) {
    return static_cast<std::uint8_t>(soundings::allVerdicts.back());
}
constexpr std::uint8_t lastOf(base::ErrorKind /*kind*/) {
    return static_cast<std::uint8_t>(base::ErrorKind::cancelled);
}

/// The plain parts of which results are made, the same way for writing and reading.
template <class Archive>
class ResultParts {
public:
    explicit ResultParts(Archive& archive) : archive_(archive) {}

    template <ANumber T>
    void take(T& value) {
        archive_.number(value);
    }
    template <OneOf<bool> T>
    void take(T& value) {
        std::uint8_t number = value ? 1 : 0;
        archive_.number(number);
        put(value, number != 0);
    }
    template <Choice T>
    void take(T& value) {
        auto number = static_cast<std::uint8_t>(value);
        archive_.number(number);
        if (number > lastOf(value)) {
            archive_.fail();
            number = 0;
        }
        put(value, static_cast<std::remove_const_t<T>>(number));
    }
    template <OneOf<units::Length, units::Depth> T>
    void take(T& value) {
        double metres = value.inMetres();
        archive_.number(metres);
        put(value, std::remove_const_t<T>::metres(metres));
    }
    template <OneOf<units::Area> T>
    void take(T& value) {
        double squareMetres = value.inSquareMetres();
        archive_.number(squareMetres);
        put(value, units::Area::squareMetres(squareMetres));
    }
    template <OneOf<units::Volume> T>
    void take(T& value) {
        double cubicMetres = value.inCubicMetres();
        archive_.number(cubicMetres);
        put(value, units::Volume::cubicMetres(cubicMetres));
    }
    template <OneOf<geo::WaterPoint> T>
    void take(T& point) {
        archive_.numbers(std::span(&point, 1));
        lookAt(point);
    }
    template <OneOf<std::string> T>
    void take(T& text) {
        size(text, 1);
        archive_.numbers(std::span(text.data(), text.size()));
    }
    /// Numbers and points at once, as there may be millions.
    template <OneOf<std::vector<double>, std::vector<geo::WaterPoint>> T>
    void take(T& list) {
        size(list, sizeof(typename T::value_type));
        archive_.numbers(std::span(list));
        if constexpr (std::same_as<typename T::value_type, geo::WaterPoint>) {
            std::ranges::for_each(list, [this](const geo::WaterPoint& p) { lookAt(p); });
        }
    }
    template <OneOf<std::vector<bool>> T>
    void take(T& list) {
        size(list, 1);
        for (std::size_t i = 0; i < list.size(); ++i) {
            bool value = list[i];
            take(value);
            put(list, i, value);
        }
    }

protected:
    /// On reading, makes the list as long as it was.
    template <class T>
    void size(T& list, std::size_t leastBytes) {
        if constexpr (Archive::isReading) {
            list.resize(archive_.count(leastBytes));
        } else {
            archive_.number(static_cast<std::uint64_t>(list.size()));
        }
    }
    template <class T, class Value>
    void put(T& place, const Value& value) {
        if constexpr (Archive::isReading) {
            place = value;
        }
    }
    void put(std::vector<bool>& list, std::size_t at, bool value) { list[at] = value; }
    void put(const std::vector<bool>& /*list*/, std::size_t /*at*/, bool /*value*/) {}

    Archive& archive_;

private:
    static constexpr double farthest_m = 1e7;

    /// No place on a water is that far away, or nowhere.
    void lookAt(const geo::WaterPoint& p) {
        if (!(std::fabs(p.x_m) < farthest_m && std::fabs(p.y_m) < farthest_m)) {
            archive_.fail();
        }
    }
};

} // namespace store
