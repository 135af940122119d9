// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <functional>

namespace CLI {
class App;
}

namespace batch {

/// What a verb does once its options are read.
using Run = std::function<base::Result<void>()>;

// Each lays one verb with its options on `app` and puts what it does into `run` when it was asked
// for.

void laySketch(CLI::App& app, Run& run);
void layMarks(CLI::App& app, Run& run);
void layLog(CLI::App& app, Run& run);
void layReview(CLI::App& app, Run& run);
void layCompare(CLI::App& app, Run& run);
void layPicture(CLI::App& app, Run& run);
void layCheck(CLI::App& app, Run& run);
void layGive(CLI::App& app, Run& run);

} // namespace batch
