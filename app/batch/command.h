// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace batch {

/// Reads the command line, runs the verb, says in one line on standard error what went wrong.
/// \return the exit code of the contract.
[[nodiscard]] int runCommand(int argc, char** argv);

} // namespace batch
