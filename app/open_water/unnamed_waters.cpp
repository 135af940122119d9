// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/unnamed_waters.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <atomic>

namespace open_water {

using base::ErrorKind;
using base::Result;

Result<std::unique_ptr<store::WaterStore>> UnnamedWaters::make() const {
    if (folder_.isEmpty() || !QDir().mkpath(folder_)) {
        return base::fail(ErrorKind::unwritableOutput,
                          "the folder for waters without a name cannot be made",
                          folder_.toStdString(), "give the water a name and a place");
    }
    // Two waters begun in the same second, in one program or in two, must not get one file: so its
    // name holds the program's number and its own. Where such a file is left from a day with the
    // clock set otherwise, making it fails, and the next try has the next number.
    static std::atomic<int> made = 0;
    const QString path = QDir(folder_).filePath(
        QStringLiteral("water-%1-%2-%3.gpkg")
            .arg(QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-dd-HHmmss")))
            .arg(QCoreApplication::applicationPid())
            .arg(++made));
    return store::create(path.toStdString());
}

bool UnnamedWaters::holds(const QString& path) const {
    return !path.isEmpty() && !folder_.isEmpty() &&
           QFileInfo(QFileInfo(path).absolutePath()) == QFileInfo(QDir(folder_).absolutePath());
}

QStringList UnnamedWaters::files() const {
    QStringList paths;
    if (!folder_.isEmpty()) {
        const QDir folder(folder_);
        for (const QString& name :
             folder.entryList({QStringLiteral("*.gpkg")}, QDir::Files, QDir::Time)) {
            paths.append(folder.filePath(name));
        }
    }
    return paths;
}

void UnnamedWaters::remove(const QString& path) {
    // With what SQLite may have laid beside it, so that nothing of it turns up again.
    for (const char* suffix : {"", "-journal", "-wal", "-shm"}) {
        QFile::remove(path + QLatin1String(suffix));
    }
}

} // namespace open_water
