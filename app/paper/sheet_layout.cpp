// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/sheet_layout.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace paper {

double roundScale(double length_m, double units) {
    const double least = length_m * 1000.0 * unitsPerMillimetre / std::max(units, 1.0);
    const double power = std::pow(10.0, std::floor(std::log10(std::max(least, 1.0))));
    constexpr std::array leads{1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 7.5, 10.0};
    const auto lead = std::find_if(leads.begin(), leads.end() - 1, [&](double candidate) {
        return candidate * power >= least * (1.0 - 1e-9);
    });
    return *lead * power;
}

} // namespace paper
