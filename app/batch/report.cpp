// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/report.h"

#include "core/base/whole_file.h"

#include <cmath>
#include <iostream>

#include <nlohmann/json.hpp>

namespace batch {

base::Result<void> writeReport(const std::filesystem::path& path,
                               const nlohmann::ordered_json& report) {
    const std::string text =
        report.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
    if (path.empty() || path == "-") {
        std::cout << text << std::flush;
        return {};
    }
    return base::writeWholeFile(path, text);
}

nlohmann::ordered_json rounded(double value, int decimals) {
    if (!std::isfinite(value)) {
        return nullptr;
    }
    const double factor = std::pow(10.0, decimals);
    return std::round(value * factor) / factor;
}

} // namespace batch
