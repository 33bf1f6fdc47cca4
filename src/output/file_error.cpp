#include "output/file_error.hpp"

#include <cerrno>
#include <system_error>
#include <utility>

#include <fmt/format.h>

#include "yaml/characters.hpp"

namespace tinworm::output {

FileError::FileError(std::string path, std::string what, std::string cure)
    : std::runtime_error(cure.empty() ? fmt::format("{}: {}", yaml::shown(path), what)
                                      : fmt::format("{}: {} ({})", yaml::shown(path), what, cure)),
      path_(std::move(path)),
      reason_(std::move(what)),
      cure_(std::move(cure)) {}

std::string reason_of(int error) {
  switch (error) {
    case ENOENT:
      return "no such file";
    case EACCES:
    case EPERM:
      return "permission denied";
    case ENOSPC:
      return "the disk is full";
    case EDQUOT:
      return "the disk quota is used up";
    case EFBIG:
      return "larger than the system lets a file become";
    case EROFS:
      return "the disk is read-only";
    case ENOTDIR:
      return "a part of the path is a file, not a folder";
    case EISDIR:
      return "a folder, not a file";
    case ENAMETOOLONG:
      return "the name is too long";
    case EPIPE:
      return "whoever was reading has gone away";
    default:
      return std::generic_category().message(error);
  }
}

std::string cure_of(int error) {
  switch (error) {
    case EACCES:
    case EPERM:
      return "see who may use it, or take another";
    case ENOSPC:
    case EDQUOT:
      return "make room, or write elsewhere";
    case EROFS:
      return "write elsewhere";
    case EISDIR:
      return "give the name of a file";
    case ENAMETOOLONG:
      return "give a shorter one";
    default:
      return "";
  }
}

}  // namespace tinworm::output
