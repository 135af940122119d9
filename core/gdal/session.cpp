// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/session.h"

#include <cpl_conv.h>
#include <cpl_error.h>
#include <gdal.h>
#include <mutex>

namespace gdal {

void hear(Session& session, bool isFailure, const char* message) {
    session.failed_ = session.failed_ || isFailure;
    if (session.complaint_.empty()) {
        session.complaint_ = message;
    }
}

namespace {

void CPL_STDCALL heard(CPLErr level, CPLErrorNum /*number*/, const char* message) {
    auto* session = static_cast<Session*>(CPLGetErrorHandlerUserData());
    if (session != nullptr && level >= CE_Warning) {
        hear(*session, level >= CE_Failure, message);
    }
}

void setUpOnce() {
    static std::once_flag done;
    std::call_once(done, [] {
        GDALAllRegister();
        // Reading a file must neither write beside it nor look at its neighbours.
        CPLSetConfigOption("GDAL_PAM_ENABLED", "NO");
        CPLSetConfigOption("GDAL_DISABLE_READDIR_ON_OPEN", "TRUE");
        // GeoJSON objects of any size: a finely drawn shore is one object.
        CPLSetConfigOption("OGR_GEOJSON_MAX_OBJ_SIZE", "0");
    });
}

} // namespace

Session::Session() {
    setUpOnce();
    CPLPushErrorHandlerEx(heard, this);
}

Session::~Session() {
    CPLPopErrorHandler();
}

void Session::forget() {
    failed_ = false;
    complaint_.clear();
    CPLErrorReset();
}

base::Error Session::error(base::ErrorKind kind, std::string what, std::string where,
                           std::string whatToDo) const {
    if (!complaint_.empty()) {
        what += " (" + complaint_ + ")";
    }
    return {kind, std::move(what), std::move(where), std::move(whatToDo)};
}

} // namespace gdal
