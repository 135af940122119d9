// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/document/settings.h"

namespace water {

namespace {

/// NaN is in no range.
bool isWithin(double value, double low, double high) {
    return value >= low && value <= high;
}

void addProblems(const StructureChoice& chosen, std::vector<std::string>& problems) {
    const double fine_m = chosen.fineScale ? chosen.fineScale->inMetres() : 8.0;
    const double broad_m = chosen.broadScale ? chosen.broadScale->inMetres() : 60.0;
    if (!isWithin(fine_m, 3.0, 50.0)) {
        problems.emplace_back("the fine scale of structure must be between 3 and 50 m");
    }
    if (!isWithin(broad_m, 20.0, 500.0) || !(broad_m > fine_m)) {
        problems.emplace_back("the broad scale of structure must be between 20 and 500 m, and more "
                              "than the fine scale");
    }
    if (chosen.dropOffFrom_percent && !isWithin(*chosen.dropOffFrom_percent, 1.0, 200.0)) {
        problems.emplace_back("the slope of a drop-off must be between 1 and 200 percent");
    }
    if (chosen.highGround && !isWithin(chosen.highGround->inMetres(), 0.05, 20.0)) {
        problems.emplace_back("the rise of high ground must be between 0.05 and 20 m");
    }
    if (chosen.leastArea && !isWithin(chosen.leastArea->inHectares(), 0.0, 10.0)) {
        problems.emplace_back("the least size of a zone must be between 0 and 10 ha");
    }
}

} // namespace

std::vector<std::string> problemsIn(const Settings& settings) {
    std::vector<std::string> problems;
    if (settings.cell && !isWithin(settings.cell->inMetres(), 0.5, 100.0)) {
        problems.emplace_back("the cell must be between 0.5 and 100 m");
    }
    if (settings.limit && !contours::Bands::make({*settings.limit}, *settings.limit)) {
        problems.emplace_back("the limit must be a depth below the surface");
    }
    if (settings.sectionArea && !isWithin(settings.sectionArea->inHectares(), 0.1, 1000.0)) {
        problems.emplace_back("the wanted size of a section must be between 0.1 and 1000 ha");
    }
    if (settings.secchi && !isWithin(settings.secchi->inMetres(), 0.1, 40.0)) {
        problems.emplace_back("the Secchi depth must be between 0.1 and 40 m");
    }
    if (!isWithin(settings.weedLeft, 0.0, 1.0)) {
        problems.emplace_back("the share of weed left must be between 0 and 1");
    }
    addProblems(settings.structure, problems);
    return problems;
}

} // namespace water
