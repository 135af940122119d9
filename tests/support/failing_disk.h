// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace support {

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
    /// Changes since the last call of failAfter, killAfter or heal.
    [[nodiscard]] int changes() const;
    /// From now on files open read-only, and none can be made.
    void forbidWriting();

    /// What the process ends with when it is killed.
    static constexpr int killedCode = 77;
};

} // namespace support
