// SPDX-License-Identifier: GPL-3.0-or-later
// Simulated logs with known rates: how often intervals hold, how often what does not differ is told
// apart, how often the best hour is found. Prints one line a kind of season.
#include "tests/support/simulated_season.h"

#include <cstdlib>

#include <fmt/format.h>

namespace {

void tell(const char* name, const support::Held& held) {
    fmt::print("{:<34} exact {:.3f}, steadied {:.3f}, told apart {:.3f}\n", name, held.exact,
               held.steadied, held.toldApart);
    std::fflush(stdout);
}

void tell(const char* name, const support::HoursHeld& held) {
    fmt::print("{:<34} peak within 30 min {:.3f}, band covers {:.3f} of the hours, nine tenths of "
               "them in {:.3f}\n",
               name, held.peak, held.covered, held.wholeCurve);
    std::fflush(stdout);
}

support::Season differing(std::mt19937& chance, double dayShape) {
    support::Season season = support::alikeSeason(false, dayShape);
    std::gamma_distribution<double> rate(2.8, 0.25 / 2.8);
    for (double& perRodHour : season.perRodHour) {
        perRodHour = rate(chance);
    }
    return season;
}

} // namespace

int main(int count, char** arguments) {
    const int logs = count > 1 ? std::atoi(arguments[1]) : 1000;
    for (const double shape : {0.0, 3.0}) {
        const std::string effect = shape > 0.0 ? ", day effect Gamma(3)" : "";
        tell(("months alike" + effect).c_str(),
             support::heldIn([&](auto&) { return support::alikeSeason(true, shape); }, logs));
        tell(("sections (or winds) alike" + effect).c_str(),
             support::heldIn([&](auto&) { return support::alikeSeason(false, shape); }, logs));
        tell(("sections differing" + effect).c_str(),
             support::heldIn([&](auto& chance) { return differing(chance, shape); }, logs));
        tell(("hours" + effect).c_str(), support::hoursHeldIn(logs, shape));
    }
    return EXIT_SUCCESS;
}
