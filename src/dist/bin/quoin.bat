@echo off
rem Starts Quoin with the Java beside it, if it brings one, or that of JAVA_HOME, or the one on the path (17 or later).
rem QUOIN_JAVA_OPTS adds options for that Java, such as -Xmx4g for a very large order.
rem No path stands without quotes: an ampersand in it would end the command, a bracket, as in Program Files (x86), a block.
setlocal disabledelayedexpansion
for %%d in ("%~dp0..\lib") do set "lib=%%~fd"
set "java=%JAVA_HOME%\bin\java.exe"
set "java=%java:"=%"
if not defined JAVA_HOME for %%f in (java.exe) do set "java=%%~$PATH:f"
for %%f in ("%~dp0..\runtime\bin\java.exe") do if exist "%%~ff" set "java=%%~ff"
if defined java if exist "%java%" goto found
>&2 echo quoin: there is no Java here; install a Java runtime 17 or later, or set JAVA_HOME
exit /b 3

:found
rem For a quick start, an archive of Quoin's classes as this Java has loaded them (from 25 on, linked too), made at the first start
rem and again wherever the folder, the jar or the Java is another. Where it cannot be written or made, or does not fit, Quoin
rem starts without it. What it was made for is compared with what "set" lists, too: letters that the console lacks become the same
rem others there as in the file.
set "loaded=%lib%\classes.jsa"
set "linked=%lib%\classes.aot"
set made_for=
if exist "%lib%\classes.for" set /p made_for=<"%lib%\classes.for"
for %%j in ("%java%") do for %%q in ("%lib%\quoin.jar") do set "this_is=%%~fj %%~tj %%~fq %%~tq"
if "%made_for%"=="this_is=%this_is%" goto start
for /f "delims=" %%t in ('set this_is') do if "%made_for%"=="%%t" goto start

set version=17
for /f "tokens=2,3" %%v in ('""%%java%%" -version 2>&1"') do if "%%v"=="version" for /f "delims=.-+" %%m in ("%%~w") do set version=%%m
if %version% lss 17 (
    >&2 echo quoin: "%java%" is older than Java 17; install a Java runtime 17 or later, or set JAVA_HOME to one
    exit /b 3
)
rem Before Java 25, methods that wait to be compiled when the archive is made would, from the archive, be waiting for ever: -Xbatch
rem lets none wait. From 25 on, the archive also has what the compilers have learnt.
set "archive=%loaded%"
set make=-XX:ArchiveClassesAtExit
set "compiling=-Xbatch -XX:TieredStopAtLevel=1"
if %version% geq 25 (
    set "archive=%linked%"
    set make=-XX:AOTCacheOutput
    set compiling=
)
set "new=%lib%\new-%RANDOM%"
mkdir "%new%" 2>nul
if not exist "%new%" goto start
"%java%" "%make%=%new%\archive" %compiling% -Xlog:disable -XX:+UseSerialGC ^
    -Djava.awt.headless=true -Dsun.font.layout.ffm=false -Dorg.freemarker.loggerLibrary=none ^
    -cp "%lib%\quoin.jar" dev.quoin.cli.FirstStart "%lib%\first-start" "%new%\run" >nul 2>&1
rem Java makes it a file to be read only.
del /f /q "%loaded%" "%linked%" 2>nul
if exist "%new%\archive" move /y "%new%\archive" "%archive%" >nul
>"%lib%\classes.for" set this_is
rmdir /s /q "%new%"

:start
rem A Java that is told of an archive and finds none does without its own, too.
set shared=-Xshare:auto
if exist "%loaded%" set "shared=-XX:SharedArchiveFile=%loaded%"
if exist "%linked%" set "shared=-XX:AOTCache=%linked%"

rem Why these: see the launcher for shells, beside this one, which has the same.
set "compiler=-XX:TieredStopAtLevel=1 -XX:CICompilerCount=1 -XX:C1MaxInlineLevel=4 -XX:C1MaxInlineSize=20"
set "compiler=%compiler% -XX:Tier3InvocationThreshold=150 -XX:Tier3MinInvocationThreshold=50 -XX:Tier3CompileThreshold=1000"
set "compiler=%compiler% -XX:Tier3BackEdgeThreshold=10000"
set "heap=-Xms48m -Xmn40m"
for %%c in (prepare check quote proof extend verify) do if "%~1"=="%%c" goto order
goto run
:order
if not "%~2"=="" for %%o in ("%~2" "%~2\order.csv" "%~2\inputs\order.csv") do if exist "%%~o" if %%~zo gtr 204800 goto large
goto run
:large
set "compiler=-XX:Tier4InvocationThreshold=100000 -XX:Tier4MinInvocationThreshold=12000"
set "compiler=%compiler% -XX:Tier4CompileThreshold=300000 -XX:Tier4BackEdgeThreshold=800000"
set "compiler=%compiler% -XX:-C1ProfileCalls -XX:-C1ProfileBranches -XX:-C1ProfileCheckcasts -XX:-C1ProfileVirtualCalls"
set "compiler=%compiler% -XX:-C1ProfileInlinedCalls -XX:C1MaxInlineSize=20"
set "heap=-Xms200m -Xmn64m"

:run
"%java%" -XX:+IgnoreUnrecognizedVMOptions "%shared%" -Xlog:disable -XX:-PrintWarnings -XX:-UsePerfData ^
    %compiler% -XX:+UseSerialGC -XX:+UseTransparentHugePages %heap% ^
    -Djava.awt.headless=true -Dsun.font.layout.ffm=false -Dorg.freemarker.loggerLibrary=none ^
    %QUOIN_JAVA_OPTS% -jar "%lib%\quoin.jar" %*
exit /b %ERRORLEVEL%
