// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace batch {

/// Lays --wait on a verb that changes a water; the seconds land in `wait_s`, which must outlive it.
void layWait(CLI::App& verb, double& wait_s);

} // namespace batch
