// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_vector.h"

#include "core/readers/vector_soundings.h"

namespace readers {

base::Result<ReadSoundings> readVector(const std::filesystem::path& path,
                                       const SoundingFileSettings& settings,
                                       base::Progress& progress) {
    return soundingsOfVector(path, SoundingFileKind::vector, settings, progress);
}

} // namespace readers
