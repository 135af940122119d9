// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_hypsography.h"

#include "core/base/number_text.h"
#include "core/base/whole_file.h"

namespace outputs {

base::Result<void> writeHypsographyTable(const std::filesystem::path& path,
                                         const surface::Hypsography& form) {
    std::string text = "depth_m,area_m2,volume_m3\n";
    for (const surface::HypsographyStep& row :
         surface::rowsEvery(form, units::Length::metres(1.0))) {
        text += base::fixedText(row.depth.inMetres(), 1) + ',' +
                base::fixedText(row.area.inSquareMetres(), 1) + ',' +
                base::fixedText(row.below.inCubicMetres(), 1) + '\n';
    }
    return base::writeWholeFile(path, text);
}

} // namespace outputs
