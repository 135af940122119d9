// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace learning {

/// What fish may depend on: each group holds weights of one kind and of one size.
enum class Group : std::uint8_t {
    kindAt,             ///< Kind of bottom under the boat; open water too.
    kindsNear,          ///< Share of the circle of a cast that each kind takes.
    depth,              ///< Hats over the logarithm of the depth.
    wind,               ///< How the wind blows on to the place, -1 to 1.
    depthByTemperature, ///< The hats times the water's temperature.
    section,
    sectionBySeason,
    place, ///< A lattice over the water.
    hour,  ///< Blocks of the day.
};

inline constexpr std::array allGroups{
    Group::kindAt,  Group::kindsNear,       Group::depth, Group::wind, Group::depthByTemperature,
    Group::section, Group::sectionBySeason, Group::place, Group::hour};

/// One number that a stay, or a place, has in one group. The key tells the weights of a group from
/// one another and means something to its maker only.
struct Feature {
    Group group = Group::kindAt;
    std::int64_t key = 0;
    double value = 0.0;
    friend bool operator==(const Feature&, const Feature&) = default;
};

/// Each group and key at most once; what is 0 may be left out.
using Features = std::vector<Feature>;

/// How much the weights of each group differ: standard deviations on the scale of logarithms.
class EffectSizes {
public:
    /// Those found good in trials on made-up seasons (ours): kinds at the boat .4, kinds near .3,
    /// depth .4, wind .25, depth by temperature .3, section .5, by season .3, place .4, hour .3;
    /// the whole water .8, a day .6.
    EffectSizes() = default;

    [[nodiscard]] double of(Group group) const { return of_[static_cast<std::size_t>(group)]; }
    void set(Group group, double size) { of_[static_cast<std::size_t>(group)] = size; }
    [[nodiscard]] double day() const { return day_; }
    void setDay(double size) { day_ = size; }
    /// Of the whole water's rate; always the same.
    [[nodiscard]] static constexpr double base() { return 0.8; }

    /// Sum of squared size times squared value: what the features may add to the logarithm before
    /// any stay speaks.
    [[nodiscard]] double priorVarianceOf(const Features& features) const {
        double sum = 0.0;
        for (const Feature& one : features) {
            sum += of(one.group) * of(one.group) * one.value * one.value;
        }
        return sum;
    }
    friend bool operator==(const EffectSizes&, const EffectSizes&) = default;

private:
    std::array<double, allGroups.size()> of_{.4, .3, .4, .25, .3, .5, .3, .4, .3};
    double day_ = .6;
};

} // namespace learning
