// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "core/base/result.h"

#include <QSizeF>

#include <filesystem>
#include <optional>

namespace paper {

/// What a chart is given away as; known by the ending of its name.
enum class ChartFormat { pdf, svg, png };

/// ".pdf", ".svg", ".png", in capitals too; nothing for any other.
[[nodiscard]] std::optional<ChartFormat> formatOf(const std::filesystem::path& path);

/// The round scale at which the whole chart just fits an A4 page: its denominator; 0 where there is
/// no water to draw.
[[nodiscard]] double scaleForA4(const chart::ChartContent& content);

/// The size in millimetres of the whole chart at 1 : `denominator`, with its head, key and margin.
[[nodiscard]] QSizeF chartSize_mm(const chart::ChartContent& content, double denominator);

/// The whole chart at 1 : `denominator`, of the size that this takes: a metre on the water is
/// 1000 / denominator millimetres on the page, and the scale is written beside the name. A PNG has
/// 300 dots to the inch, and says so. In light colours unless `content.inks` are grey.
/// \return wrongUse where there is no water to draw, or the name has another ending; unusableInput
/// where it would be larger than a page may be (4 m; of a PNG 20,000 dots); unwritableOutput.
[[nodiscard]] base::Result<void> exportChart(const std::filesystem::path& path,
                                             const chart::ChartContent& content,
                                             double denominator);

} // namespace paper
