// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/wait_option.h"

#include "app/batch/number_between.h"

#include <CLI/CLI.hpp>

namespace batch {

void layWait(CLI::App& verb, double& wait_s) {
    constexpr double longest_s = 86400.0;
    verb.add_option("--wait", wait_s,
                    "How long to wait while another program has the water, seconds (default 0)")
        ->type_name("SECONDS")
        ->check(numberBetween(0.0, longest_s));
}

} // namespace batch
