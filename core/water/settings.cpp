// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/settings.h"

namespace water {

namespace {

/// NaN is in no range.
bool isWithin(double value, double low, double high) {
    return value >= low && value <= high;
}

} // namespace

std::vector<std::string> problemsIn(const Settings& settings) {
    std::vector<std::string> problems;
    if (settings.cell && !isWithin(settings.cell->inMetres(), 0.5, 100.0)) {
        problems.emplace_back("the cell must be between 0.5 and 100 m");
    }
    if (!isWithin(settings.sectionArea.inHectares(), 0.1, 1000.0)) {
        problems.emplace_back("the wanted size of a section must be between 0.1 and 1000 ha");
    }
    if (settings.secchi && !isWithin(settings.secchi->inMetres(), 0.1, 40.0)) {
        problems.emplace_back("the Secchi depth must be between 0.1 and 40 m");
    }
    if (!isWithin(settings.weedLeft, 0.0, 1.0)) {
        problems.emplace_back("the share of weed left must be between 0 and 1");
    }
    return problems;
}

} // namespace water
