# Run by CPack between installing into its staging folder and making the package: what Debian asks for and a plain
# installation need not have.
file(GLOB_RECURSE pages "${CPACK_TEMPORARY_INSTALL_DIRECTORY}/*/shaftcut.1")
list(GET pages 0 page)
cmake_path(SET share NORMALIZE "${page}/../../../..")
set(doc "${share}/share/doc/shaftcut")
set(debian "${CMAKE_CURRENT_LIST_DIR}")

function(compress path)
  execute_process(COMMAND gzip -9nf "${path}" COMMAND_ERROR_IS_FATAL ANY)
endfunction()

compress("${page}")
configure_file("${debian}/changelog" "${doc}/changelog" COPYONLY)
compress("${doc}/changelog")

# The copyright in Debian's form, with the text of the one licence; what the README links to is a link to it.
file(STRINGS "${doc}/docs/license.txt" lines)
file(READ "${debian}/copyright-head" copyright)
foreach(line IN LISTS lines)
  if(line MATCHES "^(MIT License|Copyright .*)?$")
    continue()
  endif()
  string(APPEND copyright " ${line}\n")
endforeach()
file(WRITE "${doc}/copyright" "${copyright}")
file(REMOVE "${doc}/docs/license.txt")
file(CREATE_LINK ../copyright "${doc}/docs/license.txt" SYMBOLIC)

# Examples stand where Debian's users look for them, and under the name that the documentation uses.
file(RENAME "${doc}/samples" "${doc}/examples")
file(CREATE_LINK examples "${doc}/samples" SYMBOLIC)

file(MAKE_DIRECTORY "${share}/share/lintian/overrides")
configure_file("${debian}/lintian-overrides" "${share}/share/lintian/overrides/shaftcut" COPYONLY)
file(CHMOD "${doc}/copyright" "${doc}/changelog.gz" "${page}.gz" "${share}/share/lintian/overrides/shaftcut"
     PERMISSIONS OWNER_READ OWNER_WRITE GROUP_READ WORLD_READ)
