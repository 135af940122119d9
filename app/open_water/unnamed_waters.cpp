// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/unnamed_waters.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace open_water {

using base::ErrorKind;
using base::Result;

Result<std::unique_ptr<store::WaterStore>> UnnamedWaters::make() const {
    if (folder_.isEmpty() || !QDir().mkpath(folder_)) {
        return base::fail(ErrorKind::unwritableOutput,
                          "the folder for waters without a name cannot be made",
                          folder_.toStdString(), "give the water a name and a place");
    }
    const QDir folder(folder_);
    const QString begun =
        QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-dd-HHmmss"));
    // A clock set back, or two programs within a second, must not lead to one file for two waters.
    QString path;
    for (int number = 1; path.isEmpty() || QFileInfo::exists(path); ++number) {
        path = folder.filePath(number == 1
                                   ? QStringLiteral("water-%1.gpkg").arg(begun)
                                   : QStringLiteral("water-%1-%2.gpkg").arg(begun).arg(number));
    }
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
