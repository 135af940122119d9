// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/where_to_save.h"

#include "app/preferences/preferences.h"
#include "app/wording/tongue.h"
#include "core/store/water_store.h"

#include <QDir>
#include <QFileDialog>

namespace days {

base::Result<void> mayBeWrittenOver(const QString& path) {
    const std::filesystem::path place = path.toStdString();
    const auto refused = [&](const QString& what) {
        return base::fail(base::ErrorKind::unwritableOutput, what.toStdString(), place.string(),
                          wording::Tongue::tr("choose another name").toStdString());
    };
    std::error_code fault;
    const auto there = std::filesystem::status(place, fault);
    if (!std::filesystem::exists(there)) {
        return {};
    }
    if (!std::filesystem::is_regular_file(there)) {
        return refused(wording::Tongue::tr("that is no regular file"));
    }
    switch (store::stateOf(place)) {
    case store::FileState::missing:
    case store::FileState::unreadable:
    case store::FileState::notAWater:
        return {};
    case store::FileState::damaged:
    case store::FileState::newer:
    case store::FileState::older:
    case store::FileState::inUse:
    case store::FileState::current:
        break;
    }
    return refused(wording::Tongue::tr("that is a water file, and would be lost"));
}

QString askWhereToSave(QWidget& parent, open_water::OpenWater& open, const QString& title,
                       const QString& name, const QString& filter) {
    using preferences::FileKind;
    using preferences::Preferences;
    const QString folder = Preferences::folderOf(FileKind::output);
    const QString path = QFileDialog::getSaveFileName(
        &parent, title, folder.isEmpty() ? name : QDir(folder).filePath(name), filter);
    if (path.isEmpty()) {
        return {};
    }
    if (const auto may = mayBeWrittenOver(path); !may) {
        emit open.failed(may.error());
        return {};
    }
    Preferences::keepFolderOf(FileKind::output, path);
    return path;
}

} // namespace days
