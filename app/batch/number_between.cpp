// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/number_between.h"

#include "core/base/number_text.h"

#include <CLI/CLI.hpp>

#include <string>

namespace batch {

CLI::Validator numberBetween(double least, double most) {
    const std::string range = "[" + base::exactText(least) + " - " + base::exactText(most) + "]";
    return {[least, most, range](std::string& text) {
                const auto number = base::numberFrom(text);
                const bool isWithin = number && *number >= least && *number <= most;
                return isWithin ? std::string() : "'" + text + "' is not in the range " + range;
            },
            "in " + range};
}

} // namespace batch
