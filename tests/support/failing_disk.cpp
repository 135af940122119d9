// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/failing_disk.h"

#include "core/geo/water_frame.h"

#include <cstddef>
#include <limits>
#include <new>
#include <utility>

#include <sqlite3.h>
#include <unistd.h>

namespace support {

namespace {

/// Of the one disk that stands.
struct State {
    sqlite3_vfs* real = nullptr;
    sqlite3_vfs shim{};
    int changes = 0;
    int failAfter = std::numeric_limits<int>::max();
    int answer = SQLITE_FULL;
    bool kills = false;
    bool isReadOnly = false;
    bool isUnreadable = false;
    bool losesWordOfRemoval = false;
    bool records = false;
    std::vector<DiskChange> recorded;
    int readLocks = 0;
};

State& disk() {
    static State state;
    return state;
}

struct File {
    sqlite3_file head;
    sqlite3_file* real;
    const char* name; ///< Null for a file that nobody else sees.
};

void note(DiskChange::Kind kind, const char* name, std::int64_t at = 0, std::string bytes = {},
          bool syncsFolder = false) {
    if (disk().records && name != nullptr) {
        disk().recorded.push_back({kind, name, at, std::move(bytes), syncsFolder});
    }
}

const char* nameOf(sqlite3_file* file) {
    return reinterpret_cast<File*>(file)->name;
}

sqlite3_file* realOf(sqlite3_file* file) {
    return reinterpret_cast<File*>(file)->real;
}

/// True where this change still goes through.
bool passes() {
    return disk().changes++ < disk().failAfter;
}

void dieIfAsked() {
    if (disk().kills) {
        _exit(FailingDisk::killedCode);
    }
}

int closeFile(sqlite3_file* file) {
    return realOf(file)->pMethods == nullptr ? SQLITE_OK
                                             : realOf(file)->pMethods->xClose(realOf(file));
}
int readFile(sqlite3_file* file, void* to, int size, sqlite3_int64 at) {
    if (disk().isUnreadable) {
        return SQLITE_IOERR_READ;
    }
    return realOf(file)->pMethods->xRead(realOf(file), to, size, at);
}
int writeFile(sqlite3_file* file, const void* from, int size, sqlite3_int64 at) {
    if (passes()) {
        note(DiskChange::Kind::write, nameOf(file), at,
             {static_cast<const char*>(from), static_cast<std::size_t>(size)});
        return realOf(file)->pMethods->xWrite(realOf(file), from, size, at);
    }
    if (disk().kills) {
        realOf(file)->pMethods->xWrite(realOf(file), from, size / 2, at);
    }
    dieIfAsked();
    return disk().answer;
}
int truncateFile(sqlite3_file* file, sqlite3_int64 size) {
    if (passes()) {
        note(DiskChange::Kind::truncate, nameOf(file), size);
        return realOf(file)->pMethods->xTruncate(realOf(file), size);
    }
    dieIfAsked();
    return SQLITE_IOERR_TRUNCATE;
}
int syncFile(sqlite3_file* file, int flags) {
    if (passes()) {
        note(DiskChange::Kind::sync, nameOf(file));
        return realOf(file)->pMethods->xSync(realOf(file), flags);
    }
    dieIfAsked();
    return SQLITE_IOERR_FSYNC;
}
int fileSize(sqlite3_file* file, sqlite3_int64* size) {
    return realOf(file)->pMethods->xFileSize(realOf(file), size);
}
int lockFile(sqlite3_file* file, int kind) {
    disk().readLocks += kind == SQLITE_LOCK_SHARED ? 1 : 0;
    return realOf(file)->pMethods->xLock(realOf(file), kind);
}
int unlockFile(sqlite3_file* file, int kind) {
    return realOf(file)->pMethods->xUnlock(realOf(file), kind);
}
int isReserved(sqlite3_file* file, int* answer) {
    return realOf(file)->pMethods->xCheckReservedLock(realOf(file), answer);
}
int controlFile(sqlite3_file* file, int command, void* argument) {
    return realOf(file)->pMethods->xFileControl(realOf(file), command, argument);
}
int sectorSize(sqlite3_file* file) {
    return realOf(file)->pMethods->xSectorSize(realOf(file));
}
int characteristics(sqlite3_file* file) {
    return realOf(file)->pMethods->xDeviceCharacteristics(realOf(file));
}

sqlite3_io_methods methods() {
    sqlite3_io_methods made{};
    made.iVersion = 1; // Without shared memory: the store has no write-ahead log.
    made.xClose = closeFile;
    made.xRead = readFile;
    made.xWrite = writeFile;
    made.xTruncate = truncateFile;
    made.xSync = syncFile;
    made.xFileSize = fileSize;
    made.xLock = lockFile;
    made.xUnlock = unlockFile;
    made.xCheckReservedLock = isReserved;
    made.xFileControl = controlFile;
    made.xSectorSize = sectorSize;
    made.xDeviceCharacteristics = characteristics;
    return made;
}

int openFile(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* outFlags) {
    static const sqlite3_io_methods ours = methods();
    auto* made = reinterpret_cast<File*>(file);
    made->head.pMethods = nullptr;
    made->name = name;
    made->real = reinterpret_cast<sqlite3_file*>(reinterpret_cast<std::byte*>(file) + sizeof(File));
    if (disk().isReadOnly) {
        if ((flags & SQLITE_OPEN_CREATE) != 0) {
            return SQLITE_CANTOPEN;
        }
        flags = (flags & ~SQLITE_OPEN_READWRITE) | SQLITE_OPEN_READONLY;
    }
    if ((flags & SQLITE_OPEN_CREATE) != 0 && name != nullptr && access(name, F_OK) != 0) {
        note(DiskChange::Kind::create, name);
    }
    const int code = disk().real->xOpen(disk().real, name, made->real, flags, outFlags);
    if (made->real->pMethods != nullptr) {
        made->head.pMethods = &ours;
    }
    return code;
}

int removeFile(sqlite3_vfs*, const char* name, int syncFolder) {
    if (passes()) {
        note(DiskChange::Kind::remove, name, 0, {}, syncFolder != 0);
        const int code = disk().real->xDelete(disk().real, name, syncFolder);
        return std::exchange(disk().losesWordOfRemoval, false) ? SQLITE_IOERR_DIR_FSYNC : code;
    }
    dieIfAsked();
    return SQLITE_IOERR_DELETE;
}

} // namespace

FailingDisk::FailingDisk() {
    // PROJ keeps its own database open from its first use to the end of the process: that must not
    // lie on a disk that is taken away again.
    static_cast<void>(geo::WaterFrame::centredOn({3.1, 55.2})->wkt());
    State& state = disk();
    state = State();
    state.real = sqlite3_vfs_find(nullptr);
    state.shim = *state.real;
    state.shim.pNext = nullptr;
    state.shim.zName = "failing-disk";
    state.shim.szOsFile = static_cast<int>(sizeof(File)) + state.real->szOsFile;
    state.shim.xOpen = openFile;
    state.shim.xDelete = removeFile;
    sqlite3_vfs_register(&state.shim, 1);
}

FailingDisk::~FailingDisk() {
    sqlite3_vfs_unregister(&disk().shim);
    sqlite3_vfs_register(disk().real, 1);
}

void FailingDisk::failAfter(int changes, Way way) {
    heal();
    disk().failAfter = changes;
    disk().answer = way == Way::isFull ? SQLITE_FULL : SQLITE_IOERR_WRITE;
}

void FailingDisk::killAfter(int changes) {
    heal();
    disk().failAfter = changes;
    disk().kills = true;
}

void FailingDisk::heal() {
    disk().changes = 0;
    disk().failAfter = std::numeric_limits<int>::max();
    disk().kills = false;
}

void FailingDisk::loseWordOfRemoval() {
    disk().losesWordOfRemoval = true;
}

int FailingDisk::changes() const {
    return disk().changes;
}

void FailingDisk::forbidWriting() {
    disk().isReadOnly = true;
}

void FailingDisk::forbidReading() {
    disk().isUnreadable = true;
}

void FailingDisk::record() {
    disk().records = true;
    disk().recorded.clear();
    disk().readLocks = 0;
}

const std::vector<DiskChange>& FailingDisk::recorded() const {
    return disk().recorded;
}

int FailingDisk::readLocks() const {
    return disk().readLocks;
}

} // namespace support
