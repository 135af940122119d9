// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace support {

/// One thing that a disk was told to do.
struct DiskChange {
    enum class Kind { create, write, truncate, sync, remove };
    Kind kind = Kind::write;
    std::string file;    ///< Whole name.
    std::int64_t at = 0; ///< Where it is written; how long it is to be.
    std::string bytes;
    bool syncsFolder = false; ///< With a removal: whether it is to last.
};

/// A disk that can be made to fail: while it stands, every database of this process lies on it.
/// It passes everything on to the real disk, and counts the changes (writes, truncations, syncs,
/// removals). One at a time.
class FailingDisk {
public:
    enum class Way {
        isFull,  ///< Says that there is no room.
        isBroken ///< Says that it cannot write.
    };

    FailingDisk();
    ~FailingDisk();
    FailingDisk(const FailingDisk&) = delete;
    FailingDisk& operator=(const FailingDisk&) = delete;
    FailingDisk(FailingDisk&&) = delete;
    FailingDisk& operator=(FailingDisk&&) = delete;

    /// After `changes` more, every change fails in this way, until heal().
    void failAfter(int changes, Way way);
    /// After `changes` more, the process ends at once in the middle of the next one, half of which
    /// has reached the disk.
    void killAfter(int changes);
    void heal();
    /// The next removal takes place and is said to have failed: the word of it was lost.
    void loseWordOfRemoval();
    /// Changes since the last call of failAfter, killAfter or heal.
    [[nodiscard]] int changes() const;
    /// From now on files open read-only, and none can be made.
    void forbidWriting();
    /// From now on nothing can be read.
    void forbidReading();

    /// Remembers from now on, afresh, what it is told.
    void record();
    [[nodiscard]] const std::vector<DiskChange>& recorded() const;
    /// How often a file has been locked for reading since record().
    [[nodiscard]] int readLocks() const;

    /// What the process ends with when it is killed.
    static constexpr int killedCode = 77;
};

} // namespace support
